import { z } from "zod";
import { hashLink, hashWords, type Link, type Spoken } from "./chain.ts";
import { type Entry, entryVersion, type Facts } from "./entry.ts";
import { factsSchema } from "./entry-schema.ts";
import { spokenIn } from "./inbox.ts";
import { peopleById, personId } from "./people-table.ts";
import { type Store, sql } from "./store.ts";
import { packFacts, unpackFacts } from "./words.ts";
import { entryKey, getWords, messageKey, putWords } from "./words-table.ts";

/** What is to be appended; its place, hashes and words are made here. */
export interface Draft {
  readonly job: number;
  readonly at: string;
  readonly who: string;
  readonly platform: string;
  readonly message: string;
  readonly channel?: string;
  readonly thread?: string;
  readonly text: string;
  readonly facts: Facts;
}

const linkSchema = z.object({
  job: z.number(),
  place: z.number(),
  version: z.number(),
  at: z.string(),
  person: z.number(),
  platform: z.string(),
  message: z.string(),
  facts: z.string(),
  words: z.string(),
  hash: z.string(),
});

/** What the next entry of a job is tied to. */
const headSchema = linkSchema.pick({ place: true, hash: true }).optional();

const columns = "job, place, version, at, person, platform, message, facts, words, hash";

/** Appends one entry to its job's chain and gives it back as it will be read. */
export function appendEntry(store: Store, draft: Draft, salt: string): Entry {
  const last = headSchema.parse(
    sql(store, "SELECT place, hash FROM entry WHERE job = ? ORDER BY place DESC LIMIT 1").get(
      draft.job,
    ),
  );
  const place = (last?.place ?? 0) + 1;
  // as it was sent, the bot's name before it included
  const text = spokenIn(store, draft.platform, draft.message)?.text ?? draft.text;
  const { facts, strings } = packFacts(draft.facts, text);
  const packed = JSON.stringify(strings);
  const link = {
    job: draft.job,
    place,
    version: entryVersion,
    at: draft.at,
    person: personId(store, draft.platform, draft.who),
    platform: draft.platform,
    message: draft.message,
    facts,
    words: hashWords({ salt, text, strings: packed }),
  };
  putWords(store, entryKey(draft.job, place), { salt, content: packed });
  sql(store, `INSERT INTO entry (${columns}) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`).run(
    link.job,
    link.place,
    link.version,
    link.at,
    link.person,
    link.platform,
    link.message,
    link.facts,
    link.words,
    hashLink(link, last?.hash ?? ""),
  );
  if (place === 1) sql(store, "INSERT OR IGNORE INTO at_hand VALUES (?)").run(link.job);
  return { ...draft, text, place };
}

/** Every entry as it was written, in the order of writing. */
export function readLinks(store: Store): readonly Link[] {
  return sql(store, `SELECT ${columns} FROM entry ORDER BY seq`)
    .all()
    .map((row) => linkSchema.parse(row));
}

/** Where an entry stands and how it is tied, without what it holds. */
export type Mark = Pick<Link, "job" | "place" | "at" | "person" | "hash"> & {
  readonly seq: number;
};

const marksSchema = z.array(
  linkSchema
    .pick({ job: true, place: true, at: true, person: true, hash: true })
    .extend({ seq: z.number() }),
);

/** A mark of every entry, in the order of writing. */
export function readMarks(store: Store): readonly Mark[] {
  return marksSchema.parse(
    sql(store, "SELECT seq, job, place, at, person, hash FROM entry ORDER BY seq").all(),
  );
}

/** The entries of marks as they were written, each read when it is asked for. */
export function* linksAt(store: Store, marks: readonly Mark[]): Generator<Link> {
  const row = sql(store, `SELECT ${columns} FROM entry WHERE seq = ?`);
  for (const { seq } of marks) yield linkSchema.parse(row.get(seq));
}

/** What an entry's words hash was made over; where it was erased or is gone, which of the two. */
export function spokenFor(store: Store, link: Link): Spoken | "erased" | "missing" {
  const words = getWords(store, entryKey(link.job, link.place));
  const message = getWords(store, messageKey(link.platform, link.message));
  if (words?.erased !== undefined || message?.erased !== undefined) return "erased";
  if (words?.text === undefined) return "missing";
  const spoken = spokenIn(store, link.platform, link.message);
  return { salt: words.salt, text: spoken?.text ?? "", strings: words.text };
}

/** Every entry read back, in the order of writing. */
export function readEntries(store: Store): readonly Entry[] {
  const people = peopleById(store);
  return readLinks(store).map((link) => toEntry(store, link, people));
}

/** The entries of the jobs at hand, in the order of writing. */
export function entriesAtHand(store: Store): readonly Entry[] {
  const people = peopleById(store);
  return sql(
    store,
    `SELECT ${columns} FROM entry WHERE job IN (SELECT job FROM at_hand) ORDER BY seq`,
  )
    .all()
    .map((row) => toEntry(store, linkSchema.parse(row), people));
}

/** The entries of one job, in the order of writing. */
export function entriesOf(store: Store, job: number): readonly Entry[] {
  const people = peopleById(store);
  return sql(store, `SELECT ${columns} FROM entry WHERE job = ? ORDER BY place`)
    .all(job)
    .map((row) => toEntry(store, linkSchema.parse(row), people));
}

/** The number of the last job; 0 where there is none. */
export function lastJob(store: Store): number {
  return z.number().parse(sql(store, "SELECT coalesce(max(job), 0) FROM entry").pluck().get());
}

/** Jobs that hold an entry of a message, the first written first. */
export function jobsFiling(store: Store, message: string): readonly number[] {
  const rows = sql(store, "SELECT job FROM entry WHERE message = ? GROUP BY job ORDER BY min(seq)");
  return z.array(z.number()).parse(rows.pluck().all(message));
}

/** The job that a thread opened or named first, whatever its age; else the last that was opened in it. */
export function jobOfThread(store: Store, channel: string, thread: string): number | undefined {
  const wanted = columns.replaceAll(/\w+/g, "entry.$&");
  const rows = sql(
    store,
    `SELECT ${wanted}, seq FROM (
       SELECT entry.seq AS found FROM entry JOIN inbox
         ON inbox.platform = entry.platform AND inbox.id = entry.message
         WHERE entry.message = ? AND inbox.channel = ? AND inbox.thread IS NULL
       UNION SELECT entry.seq FROM inbox JOIN entry
         ON entry.message = inbox.id AND entry.platform = inbox.platform
         WHERE inbox.channel = ? AND inbox.thread = ?
     ) JOIN entry ON entry.seq = found ORDER BY seq`,
  ).all(thread, channel, channel, thread);
  const people = new Map<number, string>();
  const notes = rows
    .map((row) => toEntry(store, linkSchema.parse(row), people))
    .filter(({ facts }) => facts.kind === "note" && facts.opens?.listed !== true);
  const opened = notes.findLast(({ facts }) => facts.kind === "note" && facts.opens !== undefined);
  return (opened ?? notes[0])?.job;
}

const stringsSchema = z.array(z.string());

function toEntry(store: Store, link: Link, people: ReadonlyMap<number, string>): Entry {
  const spoken = spokenIn(store, link.platform, link.message);
  const words = getWords(store, entryKey(link.job, link.place))?.text;
  const strings = words === undefined ? undefined : stringsSchema.parse(JSON.parse(words));
  const facts = factsSchema.parse(unpackFacts(JSON.parse(link.facts), spoken?.text, strings));
  return {
    job: link.job,
    place: link.place,
    at: link.at,
    who: people.get(link.person) ?? `person ${link.person}`,
    platform: link.platform,
    message: link.message,
    ...placeOf(store, link),
    ...(spoken === undefined ? {} : { text: spoken.text }),
    facts,
  };
}

const placeSchema = z.object({ channel: z.string(), thread: z.string().nullable() }).optional();

function placeOf(store: Store, link: Link): Pick<Entry, "channel" | "thread"> {
  const found = placeSchema.parse(
    sql(store, "SELECT channel, thread FROM inbox WHERE platform = ? AND id = ?").get(
      link.platform,
      link.message,
    ),
  );
  if (found === undefined) return {};
  const { channel, thread } = found;
  return thread === null ? { channel } : { channel, thread };
}
