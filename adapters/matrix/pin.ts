import { z } from "zod";
import type { Ask } from "./ask.ts";
import { stateOrNothing } from "./rooms.ts";

const pinnedSchema = z.object({ pinned: z.array(z.string()) });

/** Adds a message to those pinned in a room; rejects with a refusal where the bot may not. */
export async function pin(ask: Ask, room: string, event: string): Promise<void> {
  const path = `/_matrix/client/v3/rooms/${encodeURIComponent(room)}/state/m.room.pinned_events/`;
  const found = await stateOrNothing(ask, path);
  const pinned = pinnedSchema.safeParse(found).data?.pinned ?? [];
  if (pinned.includes(event)) return;
  await ask("PUT", path, { pinned: [...pinned, event] });
}
