import { readFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { z } from "zod";
import type { BotProcess } from "./bot.ts";
import type { NioPerson, SeenEvent } from "./nio-person.ts";
import { allEvents, type RawEvent } from "./room.ts";
import type { Account, Homeserver } from "./server.ts";

/** What can be asked when an answer does not come. */
export interface Witnesses {
  readonly server: Homeserver;
  readonly bot: BotProcess;
  readonly nia: NioPerson;
  /** the encrypted room, and who may read its events as the server has them */
  readonly north: string;
  readonly reader: Account;
}
export interface Unanswered {
  readonly id: string;
  readonly room: string;
}

const mostTold = 12;

/** Why messages have no answer, for whoever reads a failed run: what each of the sides knows of them. */
export async function diagnosis(
  witnesses: Witnesses,
  missing: readonly Unanswered[],
): Promise<string> {
  const { bot, nia, server, north, reader } = witnesses;
  const raw = await allEvents(server, reader, north).catch(() => []);
  const told = missing.slice(0, mostTold).map((one) => aboutOne(witnesses, one, raw));
  const log = bot.log().filter((line) => line !== "");
  const own = readFileSync(nia.log, "utf8")
    .split("\n")
    .filter((line) => line !== "" && !/handling event|olm message using|to decrypt/.test(line));
  return [
    `${missing.length} without an answer:`,
    ...told,
    ...(missing.length > told.length ? [`… and ${missing.length - told.length} more`] : []),
    ...aboutPosts(nia.seen, raw, north),
    "The bot's log, its end:",
    ...log.slice(-25).map(short),
    "The other client's log, its end:",
    ...own.slice(-15).map(short),
    `All is kept in ${bot.folder} and ${server.folder}.`,
  ].join("\n  ");
}

const short = (line: string): string => (line.length > 300 ? `${line.slice(0, 300)}…` : line);
const textOf = (value: unknown): string => z.string().catch("?").parse(value);
const lineSchema = z.object({ at: z.string(), event: z.string(), why: z.string().optional() });

/** What the bot's log and outbox say of one message, and under which key it was sent. */
function aboutOne(
  { bot, north, nia }: Witnesses,
  { id, room }: Unanswered,
  raw: readonly RawEvent[],
): string {
  const steps = bot
    .log()
    .filter((line) => line.includes(id))
    .flatMap((line) => {
      const parsed = lineSchema.safeParse(jsonOf(line)).data;
      if (parsed === undefined) return [];
      const why = parsed.why === undefined ? "" : ` (${parsed.why})`;
      return [`${parsed.at.slice(11)} ${parsed.event}${why}`];
    });
  const event = raw.find(({ event_id }) => event_id === id);
  const key = event?.type === "m.room.encrypted" ? textOf(event.content.session_id) : "none";
  const out = outOf(bot, id).map(({ state, attempt_at, not_before, remote_id }) => {
    const seen = nia.seen.find((one) => one.id === remote_id);
    const read = seen === undefined ? "not seen" : seen.locked ? "seen, unreadable" : "read";
    return `${state}, tried ${attempt_at}, not before ${not_before}, posted as ${remote_id}, ${read} by the other client`;
  });
  const where = room === north ? `encrypted room, key ${key}` : "plain room";
  return `${id} in the ${where}; log: ${steps.slice(-6).join(", ") || "never heard of it"}; outbox: ${out.join("; ") || "nothing"}`;
}

/** The bot's encrypted posts that the other client could not read, and under which keys they went out. */
function aboutPosts(
  seen: readonly SeenEvent[],
  raw: readonly RawEvent[],
  north: string,
): readonly string[] {
  const readable = new Set(seen.filter(({ encrypted }) => encrypted).map(({ id }) => id));
  const posts = raw.filter(
    ({ type, sender }) => type === "m.room.encrypted" && sender.startsWith("@readback"),
  );
  const unread = posts.filter(({ event_id }) => !readable.has(event_id));
  const keys = new Set(unread.map(({ content }) => textOf(content.session_id)));
  const inRoom = seen.filter(({ room }) => room === north).length;
  return [
    `The bot posted ${posts.length} encrypted events; the other client saw ${inRoom} events of that room and could not read ${unread.length} of the bot's (keys ${[...keys].join(", ") || "none"}).`,
  ];
}

const outSchema = z.array(
  z.object({
    state: z.string(),
    attempt_at: z.string().nullable(),
    not_before: z.string().nullable(),
    remote_id: z.string().nullable(),
  }),
);

function outOf(bot: BotProcess, id: string): z.output<typeof outSchema> {
  const db = new Database(join(bot.folder, "store.db"), { readonly: true, timeout: 2000 });
  try {
    const rows = db.prepare(
      "SELECT state, attempt_at, not_before, remote_id FROM outbox WHERE answers = ?",
    );
    return outSchema.parse(rows.all(id));
  } finally {
    db.close();
  }
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}
