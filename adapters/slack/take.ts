import { createHash } from "node:crypto";
import type { Arrival } from "../../src/bot.ts";
import type { FileNote, Message } from "../../src/model.ts";
import { lostFile } from "../serve/lost-file.ts";
import type { Person } from "../serve/people.ts";
import { reactionMeans } from "../serve/reaction.ts";
import { download } from "./download.ts";
import { reactionSays } from "./emoji.ts";
import type { SlackFile } from "./events.ts";
import { isoOfTs } from "./ids.ts";
import { markPlace, noteDirect } from "./mark.ts";
import { plainText } from "./plain-text.ts";
import { deletionId, type Meaning } from "./translate.ts";
import { tokenSentence } from "./trouble.ts";
import type { Working } from "./working.ts";

/** How long a change waits for the message that it changes, before that one counts as unknown. */
const patienceMs = 10 * 60_000;

type Kind<K extends Meaning["kind"]> = Extract<Meaning, { kind: K }>;

/**
 * Keeps what an event means, or lets it go. It returns only once that is on the disk; `last`: Slack
 * will not bring it again, so a file that cannot be had is done without. Throws where Slack should
 * bring the event again a little later.
 */
export async function take(working: Working, meaning: Meaning, last: boolean): Promise<void> {
  switch (meaning.kind) {
    case "said":
      return takeSaid(working, meaning, last);
    case "edited":
      return takeEdited(working, meaning, last);
    case "deleted":
      return takeDeleted(working, meaning, last);
    case "reacted":
      return takeReaction(working, meaning);
    case "own_removed":
      return working.door.boardGone?.();
    case "revoked":
      return working.door.fatal(tokenSentence("token_revoked"));
    case "nothing":
      return;
  }
}

interface Admitted {
  readonly person: Person;
  readonly channel: string;
}

/** Strangers, and channels that nobody named, get silence and a line in the log. */
function admitted(
  working: Working,
  meaning: { readonly id: string; readonly channel: string; readonly user: string },
): Admitted | undefined {
  const { crew, door } = working;
  const channel = crew.channelName(meaning.channel);
  const person = crew.person(meaning.user);
  if (channel !== undefined && person !== undefined) return { person, channel };
  const { id, user } = meaning;
  const why = channel === undefined ? "channel not admitted" : "person not admitted";
  if (user !== working.me.userId) door.log.info("ignored", { platform: "slack", id, user, why });
  return undefined;
}

function textOf(working: Working, text: string): string {
  const { crew, me } = working;
  return plainText(text, {
    user: (id) => (id === me.userId ? "readback" : crew.person(id)?.person),
    channel: (id) => crew.channelName(id),
  });
}

function deliver(working: Working, message: Message, more: Omit<Arrival, "message"> = {}): void {
  const outcome = working.door.deliver({ message, ...more });
  working.door.log.info("received", { platform: "slack", id: message.id, outcome });
}

const base = (who: Admitted, meaning: { readonly id: string; readonly ts: string }) =>
  ({
    platform: "slack",
    id: meaning.id,
    at: isoOfTs(meaning.ts),
    channel: who.channel,
    person: who.person.person,
    role: who.person.role,
    text: "",
    files: [],
  }) satisfies Message;

async function takeSaid(working: Working, meaning: Kind<"said">, last: boolean): Promise<void> {
  const who = admitted(working, meaning);
  if (who === undefined) return;
  const thread = meaning.thread === undefined ? {} : { thread: meaning.thread };
  const sent = { ...base(who, meaning), text: textOf(working, meaning.text), ...thread };
  const { files, bytes } = await filesOf(working, { sent, files: meaning.files }, last);
  noteDirect(working.door, meaning.channel);
  const cursor = markPlace(working.door, meaning.channel, meaning.ts);
  deliver(working, { ...sent, files }, { bytes, cursor });
}

async function filesOf(
  working: Working,
  { sent, files }: { readonly sent: Message; readonly files: Kind<"said">["files"] },
  last: boolean,
): Promise<{ readonly files: readonly FileNote[]; readonly bytes: readonly Buffer[] }> {
  const { id } = sent;
  if (files.length === 0 || working.door.kept(id) !== undefined) return { files: [], bytes: [] };
  const notes: FileNote[] = [];
  const bytes: Buffer[] = [];
  for (const file of files) {
    const got = await download(working, file);
    if (got.kind === "bytes") {
      notes.push(noteOf(file, got.bytes));
      bytes.push(got.bytes);
    } else if (got.kind === "later" && !last) {
      throw new Error(`a file of ${id} could not be fetched: ${got.why}`);
    } else {
      lostFile(working.door, sent, { name: file.name ?? file.id, why: got.why });
    }
  }
  return { files: notes, bytes };
}

function noteOf(file: SlackFile, bytes: Buffer): FileNote {
  return {
    name: file.name ?? file.id,
    type: file.mimetype ?? "application/octet-stream",
    size: bytes.length,
    sha256: createHash("sha256").update(bytes).digest("hex"),
  };
}

/** A change may overtake what it changes; then it is asked for again. */
function isKept(working: Working, original: string, last: boolean): boolean {
  const { door } = working;
  if (door.kept(original) !== undefined) return true;
  const ts = Number(original.split(":")[2] ?? 0) * 1000;
  const known = Number(door.cursor(`first ${original.split(":")[1] ?? ""}`) ?? "Infinity") * 1000;
  if (!last && ts >= known && door.now() - ts < patienceMs) {
    throw new Error(`${original} has not arrived yet`);
  }
  return false;
}

function takeEdited(working: Working, meaning: Kind<"edited">, last: boolean): void {
  const who = admitted(working, meaning);
  if (who === undefined) return;
  if (!isKept(working, meaning.original, last)) {
    working.door.log.info("ignored", {
      platform: "slack",
      id: meaning.id,
      why: "edit of a message from before",
    });
    return;
  }
  const thread = meaning.thread === undefined ? {} : { thread: meaning.thread };
  const text = textOf(working, meaning.text);
  deliver(working, { ...base(who, meaning), text, edits: meaning.original, ...thread });
}

function takeDeleted(working: Working, meaning: Kind<"deleted">, last: boolean): void {
  const { door, crew } = working;
  if (meaning.user !== undefined && crew.person(meaning.user) === undefined) return;
  if (!isKept(working, meaning.original, last)) return;
  const was = door.kept(meaning.original)?.message;
  if (was === undefined) return;
  const { channel, person, role, thread } = was;
  deliver(working, {
    platform: "slack",
    id: meaning.id,
    at: isoOfTs(meaning.ts),
    channel,
    person,
    role,
    text: "",
    deletes: meaning.original,
    files: [],
    ...(thread === undefined ? {} : { thread }),
  });
}

function takeReaction(working: Working, meaning: Kind<"reacted">): void {
  const says = reactionSays(meaning.name);
  if (says === undefined) return;
  const who = admitted(working, meaning);
  if (who === undefined) return;
  const id = turnOf(working, meaning);
  if (id === undefined) return;
  if (meaning.off === true) {
    const { thread } = working.door.kept(id)?.message ?? {};
    const there = thread === undefined ? {} : { thread };
    const off = { ...base(who, { ...meaning, id: deletionId(id) }), deletes: id, ...there };
    deliver(working, off);
    return;
  }
  const { target } = meaning;
  const means = reactionMeans(working.door, { target, says }, who.person.person);
  if (typeof means === "string") {
    working.door.log.info("ignored", { platform: "slack", id, why: means });
    return;
  }
  deliver(working, { ...base(who, { ...meaning, id }), ...means });
}

/**
 * The id under which a reaction is put on, or off, now: somebody may take it off and put it on again.
 * Undefined where there is nothing to take off, or where it comes late and is overtaken.
 */
function turnOf({ door }: Working, { id, ts, off }: Kind<"reacted">): string | undefined {
  for (let turn = 1; ; turn++) {
    const now = turn === 1 ? id : `${id}~${turn}`;
    const on = door.kept(now);
    if (on === undefined) return off === true ? undefined : now;
    const gone = door.kept(deletionId(now));
    const isOld = Date.parse(isoOfTs(ts)) < Date.parse(on.message.at);
    if (gone === undefined) return off === true && isOld ? undefined : now;
    if (Date.parse(isoOfTs(ts)) <= Date.parse(gone.message.at)) return undefined;
  }
}
