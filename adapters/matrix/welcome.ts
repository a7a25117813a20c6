import { z } from "zod";
import type { Working } from "./working.ts";

/** One line about what was joined; it never stops a start. */
export async function welcome(working: Working): Promise<string> {
  const { connection, config, rooms, me, crew } = working;
  try {
    const joined = await joinedRooms(connection.ask);
    const lines: string[] = [];
    for (const channel of Object.keys(config.rooms)) {
      const room = rooms.roomOf(channel);
      if (room === undefined || !joined.includes(room))
        lines.push(`${channel} (not joined: invite it)`);
      else
        lines.push((await rooms.cipherOf(room)) === undefined ? channel : `${channel} (encrypted)`);
    }
    return `Matrix: ${me}; rooms ${lines.join(", ")}; ${crew.size} people`;
  } catch (error) {
    return `Matrix: ${me}; the server did not tell its rooms (${error instanceof Error ? error.message : String(error)})`;
  }
}

export async function joinedRooms(ask: Working["connection"]["ask"]): Promise<readonly string[]> {
  const answer = await ask("GET", "/_matrix/client/v3/joined_rooms");
  return z.object({ joined_rooms: z.array(z.string()) }).parse(answer).joined_rooms;
}
