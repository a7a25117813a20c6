import { z } from "zod";
import type { Message } from "../../src/model.ts";
import { eventSchema } from "./sync.ts";
import { translate } from "./translate.ts";
import { Trouble } from "./trouble.ts";
import type { Working } from "./working.ts";

type Left = Pick<Message, "person" | "role" | "channel"> &
  Partial<Pick<Message, "text" | "edits" | "deletes" | "thread">>;

const changed = z.object({
  unsigned: z.object({ "m.relations": z.object({ "m.replace": eventSchema }) }),
});

/** What a removal leaves: nothing of a message; of an edit, the text that the server now shows. */
export async function redrawn(
  working: Working,
  room: string,
  target: string,
): Promise<Left | string> {
  const kept = working.door.kept(target)?.message;
  if (kept === undefined) return "a removal of something that was not kept";
  const { person, role, channel, thread } = kept;
  const about = { person, role, channel, ...(thread === undefined ? {} : { thread }) };
  if (kept.edits === undefined) return { ...about, deletes: target };
  const original = working.door.kept(kept.edits)?.message;
  if (original === undefined) return "a removal of an edit whose message was not kept";
  const path = `/_matrix/client/v3/rooms/${encodeURIComponent(room)}/event/${encodeURIComponent(original.id)}`;
  const text = textNow(await textShown(working, room, path), original.text);
  return text === undefined
    ? { ...about, deletes: original.id }
    : { ...about, edits: original.id, text };
}

/** The newest edit that is left, as the server bundles it; "removed" where the message is gone with it. */
async function textShown(
  working: Working,
  room: string,
  path: string,
): Promise<string | "removed" | undefined> {
  let found: unknown;
  try {
    found = await working.connection.ask("GET", path);
  } catch (error) {
    if (error instanceof Trouble && error.kind === "refused") return undefined;
    throw error;
  }
  const event = eventSchema.parse(found);
  if (Object.keys(event.content).length === 0) return "removed";
  const edit = changed.safeParse(found).data?.unsigned["m.relations"]["m.replace"];
  if (edit === undefined) return undefined;
  const open =
    edit.type === "m.room.encrypted" ? await working.machine.decrypt(room, edit) : undefined;
  const clear = open?.ok === true ? { ...edit, type: open.type, content: open.content } : edit;
  const means = translate(clear);
  return means.kind === "message" ? means.text : undefined;
}

const textNow = (shown: string | undefined, first: string): string | undefined =>
  shown === "removed" ? undefined : (shown ?? first);
