import { createHash } from "node:crypto";
import type { FileNote, Message } from "../../src/model.ts";
import { isoWithOffset } from "../local-time.ts";
import { lostFile } from "../serve/lost-file.ts";
import type { Person } from "../serve/people.ts";
import { reactionMeans } from "../serve/reaction.ts";
import { redrawn } from "./meaning.ts";
import { downloadFile, mostFileBytes } from "./media.ts";
import type { RoomEvent } from "./sync.ts";
import { threadOf } from "./threads.ts";
import { type Incoming, type RemoteFile, translate } from "./translate.ts";
import { Trouble } from "./trouble.ts";
import type { Working } from "./working.ts";

/** `locked`: it cannot be decrypted yet; `early`: what it changes is itself still locked. */
export type Arrived = "kept" | "passed over" | "locked" | "early";

/** An event of an admitted room, from its bytes to the store. Rejects where the server or the disk must be tried again. */
export async function arrive(
  working: Working,
  room: string,
  event: RoomEvent,
  locked: ReadonlySet<string>,
): Promise<Arrived> {
  const { door, me, crew } = working;
  const channel = working.rooms.channelOf(room);
  if (event.sender === me || channel === undefined) return "passed over";
  if (!listened.has(event.type)) return "passed over";
  const removed = event.type === "m.room.redaction" ? translate(event) : undefined;
  if (removed?.kind === "removal" && door.posted(removed.target)?.kind === "board") {
    door.boardGone?.();
    return "passed over";
  }
  const person = crew.get(event.sender);
  if (person === undefined) {
    door.log.info("stranger", {
      platform: "matrix",
      message: event.event_id,
      sender: event.sender,
    });
    return "passed over";
  }
  const opened = await readable(working, room, event);
  if (opened === "locked") return "locked";
  const incoming = translate(opened);
  if (incoming.kind === "message" && incoming.edits !== undefined && locked.has(incoming.edits))
    return "early";
  if (incoming.kind === "removal" && locked.has(incoming.target)) return "early";
  const message = await messageFrom(working, { room, channel, person, event: opened, incoming });
  if (typeof message === "string") {
    door.log.info("passed over", { platform: "matrix", message: event.event_id, why: message });
    return "passed over";
  }
  if (message.thread !== undefined) working.lastInThread.set(message.thread, event.event_id);
  const state = door.deliver(
    message.bytes === undefined
      ? { message: message.message }
      : { message: message.message, bytes: message.bytes },
  );
  door.log.info("received", { platform: "matrix", message: event.event_id, state });
  return "kept";
}

const listened = new Set(["m.room.message", "m.room.encrypted", "m.room.redaction", "m.reaction"]);

async function readable(
  working: Working,
  room: string,
  event: RoomEvent,
): Promise<RoomEvent | "locked"> {
  // a removed encrypted event is empty: nothing to decrypt
  if (event.type !== "m.room.encrypted" || Object.keys(event.content).length === 0) return event;
  const found = await working.machine.decrypt(room, event);
  if (!found.ok) {
    return "locked";
  }
  return { ...event, type: found.type, content: found.content };
}

interface Heard {
  readonly room: string;
  readonly channel: string;
  readonly person: Person;
  readonly event: RoomEvent;
  readonly incoming: Incoming;
}
interface Made {
  readonly message: Message;
  readonly thread?: string;
  readonly bytes?: readonly Uint8Array[];
}

/** The message to keep, or why there is none. */
async function messageFrom(working: Working, heard: Heard): Promise<Made | string> {
  const { incoming } = heard;
  const base = baseOf(heard);
  switch (incoming.kind) {
    case "nothing":
      return incoming.why;
    case "reaction": {
      const means = reactionMeans(working.door, incoming, heard.person.person);
      return typeof means === "string" ? means : { message: { ...base, ...means } };
    }
    case "removal": {
      const means = await redrawn(working, heard.room, incoming.target);
      return typeof means === "string" ? means : { message: { ...base, ...means } };
    }
    case "message":
      return incoming.edits === undefined
        ? said(working, heard, incoming)
        : edited(working, heard, incoming);
  }
}

function baseOf({ event, channel, person }: Heard): Message {
  return {
    platform: "matrix",
    id: event.event_id,
    at: isoWithOffset(new Date(event.origin_server_ts)),
    channel,
    person: person.person,
    role: person.role,
    text: "",
    files: [],
  };
}

type Said = Extract<Incoming, { kind: "message" }>;

async function said(working: Working, heard: Heard, incoming: Said): Promise<Made> {
  const thread =
    incoming.thread === undefined ? undefined : threadOf(working.door, incoming.thread);
  const text = namedPlainly(incoming.text, working.me);
  const answers =
    incoming.answers === undefined ? undefined : answeredBy(working, incoming.answers);
  const message = {
    ...baseOf(heard),
    text,
    ...(thread === undefined ? {} : { thread }),
    ...(answers === undefined ? {} : { answers }),
  };
  if (incoming.file === undefined) return { message, ...(thread === undefined ? {} : { thread }) };
  const bytes = await bytesOf(working, message, incoming.file);
  if (bytes === undefined) return { message };
  const { name, type } = incoming.file;
  const sha256 = createHash("sha256").update(bytes).digest("hex");
  const note: FileNote = { name, type, size: bytes.length, sha256 };
  return {
    message: { ...message, files: [note] },
    bytes: [bytes],
    ...(thread === undefined ? {} : { thread }),
  };
}

/** What a reply is to, as the record knows it: a post of the bot's is about what it answers. */
function answeredBy({ door }: Working, event: string): string {
  const row = door.posted(event);
  return row?.answers ?? row?.id ?? event;
}

/** An edit counts only from the author of the message, in its room, and only of a message that is no edit itself. */
function edited(working: Working, heard: Heard, incoming: Said): Made | string {
  const original =
    incoming.edits === undefined ? undefined : working.door.kept(incoming.edits)?.message;
  if (original === undefined) return "an edit of something that was not kept";
  if (original.person !== heard.person.person) return "an edit of somebody else's message";
  if (original.channel !== heard.channel) return "an edit of a message in another room";
  if (original.edits !== undefined || original.deletes !== undefined) return "an edit of an edit";
  const { thread } = original;
  return {
    message: {
      ...baseOf(heard),
      text: namedPlainly(incoming.text, working.me),
      edits: original.id,
      ...(thread === undefined ? {} : { thread }),
    },
  };
}

/** Clients write the bot's id or name where it is spoken to; its own word for itself stands instead. */
function namedPlainly(text: string, me: string): string {
  const name = /^@([^:]+):/.exec(me)?.[1] ?? me;
  for (const spoken of [me, `@${name}`, name]) {
    if (
      text.toLowerCase().startsWith(spoken.toLowerCase()) &&
      !/^\w/.test(text.slice(spoken.length))
    ) {
      return `readback${text.slice(spoken.length)}`;
    }
  }
  return text;
}

/** How often a file was asked for in vain; a server that has lost it must not hold up everything after it. */
const tries = new Map<string, number>();
const mostTries = 4;

async function bytesOf(
  working: Working,
  sent: Message,
  file: RemoteFile,
): Promise<Uint8Array | undefined> {
  const { door, connection, machine } = working;
  const { id: event } = sent;
  const { name } = file;
  if (file.size !== undefined && file.size > mostFileBytes) {
    lostFile(door, sent, { name, why: `${file.size} bytes are too large to keep` });
    return undefined;
  }
  try {
    const bytes = await downloadFile(connection, file.url);
    return file.cipher === undefined ? bytes : machine.decryptBytes(bytes, file.cipher);
  } catch (error) {
    const tried = (tries.get(event) ?? 0) + 1;
    tries.set(event, tried);
    const again = error instanceof Trouble && error.kind !== "refused" && tried < mostTries;
    if (again) throw error;
    const why = error instanceof Error ? error.message : String(error);
    lostFile(door, sent, { name, why });
    return undefined;
  }
}
