import { z } from "zod";
import { early, Trouble } from "./trouble.ts";
import type { Working } from "./working.ts";

/** A body as it goes out: plain or encrypted, which fixes the event's type. */
const wireSchema = z.object({ type: z.string(), content: z.record(z.string(), z.unknown()) });
type Wire = z.output<typeof wireSchema>;

export interface Posting {
  readonly room: string;
  /** the transaction id: the server posts it once, however often it is asked */
  readonly key: string;
  readonly content: object;
  /** what went out the first time */
  readonly body?: string;
  readonly keepBody?: (body: string) => void;
  /** whether something was posted under the key, for the rare case that only a look can tell */
  readonly look?: () => Promise<string | undefined>;
}

/** Posts a message, encrypted where the room is. Gives its event id. */
export async function post(working: Working, posting: Posting): Promise<string> {
  const wire = await wireFor(working, posting);
  if (typeof wire === "string") return wire;
  const path = `/_matrix/client/v3/rooms/${encodeURIComponent(posting.room)}/send/${wire.type}/${encodeURIComponent(posting.key)}`;
  const answer = await working.connection.ask("PUT", path, wire.content);
  return z.object({ event_id: z.string() }).parse(answer).event_id;
}

/** The bytes to send; or the id of what was already posted. */
async function wireFor(working: Working, posting: Posting): Promise<Wire | string> {
  try {
    const cipher = await working.rooms.cipherOf(posting.room);
    const kept =
      posting.body === undefined ? undefined : wireSchema.parse(JSON.parse(posting.body));
    const nowPrivate = cipher !== undefined && kept?.type === "m.room.message";
    if (kept !== undefined && !nowPrivate) return kept;
    // encrypted since the first attempt: the plain body must never leave again
    const found = nowPrivate ? await posting.look?.() : undefined;
    if (found !== undefined) return found;
    const wire = cipher === undefined ? plain(posting) : await sealed(working, posting, cipher);
    posting.keepBody?.(JSON.stringify(wire));
    return wire;
  } catch (error) {
    throw early(error);
  }
}

function plain(posting: Posting): Wire {
  return wireSchema.parse({ type: "m.room.message", content: posting.content });
}

async function sealed(
  working: Working,
  posting: Posting,
  cipher: { readonly rotationMs: number; readonly rotationMessages: number },
): Promise<Wire> {
  const { members, visibility } = await working.rooms.readersOf(posting.room);
  if (!members.includes(working.me)) throw new Trouble("refused", "the bot is not in that room");
  const to = { room: posting.room, members, visibility, ...cipher };
  const content = await working.machine.encrypt(to, "m.room.message", posting.content);
  return wireSchema.parse({ type: "m.room.encrypted", content });
}
