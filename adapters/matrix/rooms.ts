import { z } from "zod";
import { directPrefix } from "../../src/vocabulary.ts";
import type { Ask } from "./ask.ts";
import type { MatrixConfig } from "./config.ts";
import type { KeyFile } from "./keys/key-file.ts";
import { Trouble } from "./trouble.ts";

/** How a room encrypts; rotation as its state says, or as the specification recommends. */
export interface Cipher {
  readonly rotationMs: number;
  readonly rotationMessages: number;
}

/** Which rooms the bot works in, and what is known of each. */
export interface Rooms {
  /** finds the rooms behind addresses */
  readonly resolve: () => Promise<void>;
  /** the name of an admitted room; undefined for every other */
  readonly channelOf: (room: string) => string | undefined;
  readonly roomOf: (channel: string) => string | undefined;
  readonly admitDirect: (room: string, inviter: string) => void;
  readonly noteEncrypted: (room: string, content: Readonly<Record<string, unknown>>) => void;
  /**
   * How a room encrypts, undefined where it does not. Once encrypted is always encrypted; only the
   * server's own "there is no such state" means plain, and any other answer rejects.
   */
  readonly cipherOf: (room: string) => Promise<Cipher | undefined>;
  /** everybody who is to read what is said there */
  readonly readersOf: (
    room: string,
  ) => Promise<{ readonly members: readonly string[]; readonly visibility: string }>;
  readonly forgetReaders: (room: string) => void;
}

/** Matrix specification, m.room.encryption: "a week is the recommended default", "100". */
const weekMs = 7 * 24 * 3600 * 1000;
const cipherSchema = z.object({
  algorithm: z.string(),
  rotation_period_ms: z.number().positive().catch(weekMs),
  rotation_period_msgs: z.number().int().positive().catch(100),
});
const state = (room: string, type: string): string =>
  `/_matrix/client/v3/rooms/${encodeURIComponent(room)}/state/${encodeURIComponent(type)}/`;
const encryptedNote = (room: string): string => `encrypted:${room}`;
/** A direct room's name in the record is its id, marked as one; without the mark in older stores. */
const bare = (channel: string): string =>
  channel.startsWith(directPrefix) ? channel.slice(directPrefix.length) : channel;
const directNote = (room: string): string => `direct:${room}`;

export function openRooms(config: MatrixConfig, file: KeyFile, ask: Ask): Rooms {
  const channels = new Map<string, string>();
  const readers = new Map<string, { members: readonly string[]; visibility: string }>();
  for (const [channel, room] of Object.entries(config.rooms))
    if (room.startsWith("!")) channels.set(room, channel);
  const noteEncrypted: Rooms["noteEncrypted"] = (room, content) =>
    file.setNote(encryptedNote(room), JSON.stringify(content));
  return {
    resolve: async () => {
      for (const [channel, room] of Object.entries(config.rooms)) {
        if (room.startsWith("#")) channels.set(await roomBehind(ask, room), channel);
      }
    },
    channelOf: (room) =>
      channels.get(room) ??
      (config.direct && file.note(directNote(room)) !== undefined
        ? `${directPrefix}${room}`
        : undefined),
    roomOf: (channel) =>
      [...channels].find(([, name]) => name === channel)?.[0] ??
      (file.note(directNote(bare(channel))) === undefined ? undefined : bare(channel)),
    admitDirect: (room, inviter) => file.setNote(directNote(room), inviter),
    noteEncrypted,
    cipherOf: async (room) => {
      const known = file.note(encryptedNote(room));
      if (known !== undefined) return cipherFrom(JSON.parse(known));
      const found = await stateOrNothing(ask, state(room, "m.room.encryption"));
      if (found === undefined) return undefined;
      noteEncrypted(room, found);
      return cipherFrom(found);
    },
    readersOf: async (room) => {
      const known = readers.get(room);
      if (known !== undefined) return known;
      const found = await askReaders(ask, room);
      readers.set(room, found);
      return found;
    },
    forgetReaders: (room) => void readers.delete(room),
  };
}

async function roomBehind(ask: Ask, address: string): Promise<string> {
  try {
    const path = `/_matrix/client/v3/directory/room/${encodeURIComponent(address)}`;
    return z.object({ room_id: z.string() }).parse(await ask("GET", path)).room_id;
  } catch (error) {
    if (!(error instanceof Trouble) || error.code !== "M_NOT_FOUND") throw error;
    throw new Trouble(
      "refused",
      `the server knows no room ${address}; mend "rooms", or give its id`,
    );
  }
}

/** An algorithm that is not known here must not be read as none. */
function cipherFrom(content: unknown): Cipher {
  const known = cipherSchema.safeParse(content);
  if (known.success && known.data.algorithm !== "m.megolm.v1.aes-sha2") {
    throw new Trouble(
      "refused",
      `the room encrypts with ${known.data.algorithm}, which is not known here`,
    );
  }
  const { rotation_period_ms, rotation_period_msgs } = known.data ?? {};
  return {
    rotationMs: rotation_period_ms ?? weekMs,
    rotationMessages: rotation_period_msgs ?? 100,
  };
}

const record = z.record(z.string(), z.unknown());

/** A state event's content; undefined only where the server says that there is none. */
export async function stateOrNothing(
  ask: Ask,
  path: string,
): Promise<Readonly<Record<string, unknown>> | undefined> {
  try {
    return record.parse(await ask("GET", path));
  } catch (error) {
    const missing = error instanceof Trouble && error.status === 404;
    if (missing && error.code === "M_NOT_FOUND") return undefined;
    // something on the way does not know the question: that is no answer to it
    if (missing) throw new Trouble("unanswered", error.message, { status: 404 });
    throw error;
  }
}

const membersSchema = z.object({
  chunk: z.array(
    z.object({ state_key: z.string(), content: z.object({ membership: z.string() }) }),
  ),
});

async function askReaders(
  ask: Ask,
  room: string,
): Promise<{ readonly members: readonly string[]; readonly visibility: string }> {
  const found = await stateOrNothing(ask, state(room, "m.room.history_visibility"));
  const visibility = z.string().catch("shared").parse(found?.history_visibility);
  const path = `/_matrix/client/v3/rooms/${encodeURIComponent(room)}/members`;
  const { chunk } = membersSchema.parse(
    await ask("GET", path, undefined, { query: { not_membership: "leave" } }),
  );
  const read = visibility === "joined" ? ["join"] : ["join", "invite"];
  const members = chunk.filter(({ content }) => read.includes(content.membership));
  return { visibility, members: members.map(({ state_key }) => state_key) };
}
