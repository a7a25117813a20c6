import { z } from "zod";
import type { Found, Outcome, Part, SendContext } from "../chat-platform.ts";
import { fileContent, type Spot, textContent } from "./content.ts";
import { lookFor } from "./look.ts";
import { pin } from "./pin.ts";
import { post } from "./post.ts";
import { eventSchema } from "./sync.ts";
import { rootOf } from "./threads.ts";
import { early, Trouble } from "./trouble.ts";
import type { Working } from "./working.ts";

/** Carries one part of an outbox row to its room. */
export async function sendPart(
  working: Working,
  part: Part,
  context: SendContext,
): Promise<Outcome> {
  const room = working.rooms.roomOf(part.channel);
  if (room === undefined) {
    return {
      kind: "refused",
      why: `No room is configured for the channel ${part.channel}; name it under "rooms".`,
    };
  }
  try {
    const before = await saidBefore(working, room, part);
    return before === undefined ? await carried(working, room, { part, context }) : sent(before);
  } catch (error) {
    return outcomeOf(working, part, error);
  }
}

interface Carrying {
  readonly part: Part;
  readonly context: SendContext;
}

async function carried(
  working: Working,
  room: string,
  { part, context }: Carrying,
): Promise<Outcome> {
  switch (part.kind) {
    case "text": {
      if (part.replaces !== undefined && (await isGone(working, room, part.replaces))) {
        return { kind: "gone", why: "the post to change was removed" };
      }
      const said = { text: part.text, board: part.of === "board", key: part.key };
      const content = textContent(said, spotOf(working, part));
      return sent(await posted(working, room, { part, context }, content));
    }
    case "upload":
      return sent(await upload(working, room, { part, context }));
    case "share": {
      const source = z.record(z.string(), z.unknown()).parse(JSON.parse(context.before ?? "{}"));
      const { size, ...address } = source;
      const { name = "file", type = "application/octet-stream" } = part.file ?? {};
      const about = { name, type, size: z.number().catch(0).parse(size) };
      const spot = spotOf(working, part);
      const content = fileContent(about, address, { key: part.key, spot });
      return sent(await posted(working, room, { part, context }, content));
    }
    case "pin":
      await pin(working.connection.ask, room, context.before ?? "");
      return sent(context.before ?? "");
  }
}

const sent = (remote: string): Outcome => ({ kind: "sent", remote });

function posted(
  working: Working,
  room: string,
  { part, context }: Carrying,
  content: object,
): Promise<string> {
  return post(working, {
    room,
    key: part.key,
    content,
    keepBody: context.keepBody,
    look: () => lookFor(working, room, { key: part.key, since: 0 }),
    ...(part.body === undefined ? {} : { body: part.body }),
  });
}

function spotOf(working: Working, part: Part): Spot {
  if (part.replaces !== undefined) return { replaces: part.replaces };
  if (part.thread === undefined) return {};
  const root = rootOf(working.door, part.thread);
  return { thread: { root, last: working.lastInThread.get(part.thread) ?? root } };
}

async function isGone(working: Working, room: string, id: string): Promise<boolean> {
  const path = `/_matrix/client/v3/rooms/${encodeURIComponent(room)}/event/${encodeURIComponent(id)}`;
  try {
    const event = eventSchema.parse(await working.connection.ask("GET", path));
    return Object.keys(event.content).length === 0;
  } catch (error) {
    if (error instanceof Trouble && error.status === 404) return true;
    throw early(error);
  }
}

/** Brings bytes to the server, encrypted for an encrypted room. What the share needs is the remote id. */
async function upload(
  working: Working,
  room: string,
  { part, context }: Carrying,
): Promise<string> {
  const { bytes } = context;
  if (bytes === undefined || part.file === undefined)
    throw new Trouble("refused", "the file's bytes are no longer kept");
  const { name, type } = part.file;
  let secret: ReturnType<Working["machine"]["encryptBytes"]> | undefined;
  try {
    const cipher = await working.rooms.cipherOf(room);
    secret = cipher === undefined ? undefined : working.machine.encryptBytes(bytes);
  } catch (error) {
    throw early(error);
  }
  if (secret === undefined) {
    const url = await working.connection.upload(name, type, bytes);
    return JSON.stringify({ url, size: bytes.length });
  }
  // neither name nor type of a private file is told to the server
  const url = await working.connection.upload("file", "application/octet-stream", secret.bytes);
  return JSON.stringify({ file: { ...secret.info, url }, size: bytes.length });
}

/** How long the server's own failures are left alone. */
const pauseMs = 3000;

function outcomeOf(working: Working, part: Part, cause: unknown): Outcome {
  const why = cause instanceof Error ? cause.message : String(cause);
  if (!(cause instanceof Trouble)) return { kind: "unclear", why };
  switch (cause.kind) {
    case "limited":
      return { kind: "later", retryMs: cause.retryMs, why };
    case "unanswered":
      return cause.early ? { kind: "later", retryMs: pauseMs, why } : { kind: "unclear", why };
    case "token":
      working.door.fatal(tokenSentence(why));
      return { kind: "later", retryMs: 60_000, why };
    case "refused":
      return { kind: "refused", why: refusal(part, cause, why) };
  }
}

export function tokenSentence(why: string): string {
  return `The Matrix server no longer takes the bot's token (${why}). Put its key file aside, give the password once more and start again: it will be a new device.`;
}

function refusal(part: Part, trouble: Trouble, why: string): string {
  if (trouble.code !== "M_FORBIDDEN") return why;
  return part.kind === "pin"
    ? `The board cannot be pinned in ${part.channel}: let the bot change pinned messages there, or pin it by hand.`
    : `The bot may not write in ${part.channel} (${why}): invite it there or let it write.`;
}

/** Synapse remembers a transaction id for a day; well before that, the same key posts nothing twice. */
const rememberedMs = 20 * 3600 * 1000;

const answersOf = /^reply:matrix:(.+):\d+(?:#\d+)?$/;

/**
 * The post that stands under that key already, where the server may not know it again: a store that was
 * brought back from a backup answers what was said since then, a day later or as a new device.
 */
async function saidBefore(working: Working, room: string, part: Part): Promise<string | undefined> {
  const { door, standing } = working;
  if (part.replaces !== undefined || part.kind === "upload" || part.kind === "pin")
    return undefined;
  const stands = standing.get(part.key);
  if (stands !== undefined) return stands;
  const answered = answersOf.exec(part.key)?.[1];
  const at = answered === undefined ? undefined : door.kept(answered)?.message.at;
  if (at === undefined) return undefined;
  const since = Date.parse(at);
  if (door.now() - since < rememberedMs) return undefined;
  try {
    return await lookFor(working, room, { key: part.key, since });
  } catch (error) {
    throw early(error);
  }
}

/** Whether a part that may have gone out did. */
export async function findPart(working: Working, part: Part, since: number): Promise<Found> {
  if (part.kind === "upload" || part.kind === "pin") return { kind: "absent" };
  const stands = working.standing.get(part.key);
  if (stands !== undefined) return { kind: "found", remote: stands };
  if (working.door.now() - since < rememberedMs) return { kind: "absent" };
  const room = working.rooms.roomOf(part.channel);
  if (room === undefined) return { kind: "absent" };
  try {
    const remote = await lookFor(working, room, { key: part.key, since });
    return remote === undefined ? { kind: "absent" } : { kind: "found", remote };
  } catch (error) {
    return { kind: "unclear", why: error instanceof Error ? error.message : String(error) };
  }
}
