import { z } from "zod";
import { keyField } from "./content.ts";
import { eventsOf, pageSize, type RoomEvent } from "./sync.ts";
import type { Working } from "./working.ts";

const pageSchema = z.object({ chunk: z.array(z.unknown()), end: z.string().optional() });
/** A bound on the pages read, so that a busy room does not hold up the sending. */
const mostPages = 50;

/** The id of our own post under an outbox key, posted after `since` (ms); undefined where there is none. */
export async function lookFor(
  working: Working,
  room: string,
  what: { readonly key: string; readonly since: number },
): Promise<string | undefined> {
  const path = `/_matrix/client/v3/rooms/${encodeURIComponent(room)}/messages`;
  let from: string | undefined;
  for (let page = 0; page < mostPages; page += 1) {
    const query = { dir: "b", limit: pageSize, ...(from === undefined ? {} : { from }) };
    const { chunk, end } = pageSchema.parse(
      await working.connection.ask("GET", path, undefined, { query }),
    );
    for (const event of eventsOf(chunk)) {
      // the server's clock and ours may differ by a little
      if (event.origin_server_ts < what.since - 60_000) return undefined;
      if (event.sender === working.me && (await keyOf(working, room, event)) === what.key)
        return event.event_id;
    }
    if (end === undefined || chunk.length === 0) return undefined;
    from = end;
  }
  return undefined;
}

/** The outbox key of a post of ours; undefined where it has none or cannot be read. */
export async function keyOf(
  working: Working,
  room: string,
  event: RoomEvent,
): Promise<string | undefined> {
  const open =
    event.type === "m.room.encrypted" ? await working.machine.decrypt(room, event) : event;
  const key = "ok" in open && !open.ok ? undefined : open.content[keyField];
  return typeof key === "string" ? key : undefined;
}
