import { z } from "zod";
import type { FileNote, Message } from "../model.ts";
import { withoutAddress } from "./address.ts";
import { filesSchema } from "./entry-schema.ts";
import { personId } from "./people-table.ts";
import { type Store, sql } from "./store.ts";
import { getWords, messageKey, putWords } from "./words-table.ts";

/**
 * Every message as it came, once per platform and id. `new`: not worked on yet; `done`;
 * `waiting`: could not be filed until somebody answers; `failed`: parked with its error.
 */
export type InboxState = "new" | "done" | "waiting" | "failed";

export interface InboxRow {
  readonly seq: number;
  readonly message: Message;
  readonly state: InboxState;
  readonly job: number | null;
  readonly error: string | null;
}

const rowSchema = z.object({
  seq: z.number(),
  platform: z.string(),
  id: z.string(),
  at: z.string(),
  channel: z.string(),
  thread: z.string().nullable(),
  handle: z.string(),
  role: z.enum(["tech", "dispatcher", "office"]),
  edits: z.string().nullable(),
  deletes: z.string().nullable(),
  files: z.string(),
  state: z.enum(["new", "done", "waiting", "failed"]),
  job: z.number().nullable(),
  error: z.string().nullable(),
});

const columns = `seq, inbox.platform AS platform, inbox.id AS id, at, channel, thread, handle, role,
  edits, deletes, files, state, job, error
  FROM inbox JOIN person ON person.id = inbox.person`;

/** Keeps a message; false where it was there already. */
export function keepMessage(store: Store, message: Message, salt: string): boolean {
  const added = sql(
    store,
    `INSERT OR IGNORE INTO inbox
       (platform, id, at, instant, channel, thread, person, role, edits, deletes, files)
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
  ).run(
    message.platform,
    message.id,
    message.at,
    Date.parse(message.at),
    message.channel,
    message.thread ?? null,
    personId(store, message.platform, message.person),
    message.role,
    message.edits ?? null,
    message.deletes ?? null,
    JSON.stringify(
      message.files.map(({ type, size, sha256 }) => ({ name: "", type, size, sha256 })),
    ),
  );
  if (added.changes === 0) return false;
  const names = message.files.map((file) => file.name);
  putWords(store, messageKey(message.platform, message.id), {
    salt,
    content: JSON.stringify({ text: message.text, names, answers: message.answers }),
  });
  return true;
}

const spokenSchema = z.object({
  text: z.string(),
  names: z.array(z.string()),
  answers: z.string().optional(),
});

/** A message's text, its file names and what it replies to; undefined once erased. */
export function spokenIn(
  store: Store,
  platform: string,
  id: string,
): z.output<typeof spokenSchema> | undefined {
  const words = getWords(store, messageKey(platform, id))?.text;
  return words === undefined ? undefined : spokenSchema.parse(JSON.parse(words));
}

function toRow(store: Store, found: unknown): InboxRow {
  const row = rowSchema.parse(found);
  const spoken = spokenIn(store, row.platform, row.id);
  const files: readonly FileNote[] = filesSchema
    .parse(JSON.parse(row.files))
    .map((file, index) => ({ ...file, name: spoken?.names[index] ?? "" }));
  const said = withoutAddress(spoken?.text ?? "");
  const message: Message = {
    platform: row.platform,
    id: row.id,
    at: row.at,
    channel: row.channel,
    person: row.handle,
    role: row.role,
    text: said.text,
    files,
    ...(said.toBot ? { to_bot: true } : {}),
    ...(spoken?.answers === undefined ? {} : { answers: spoken.answers }),
    ...(row.thread === null ? {} : { thread: row.thread }),
    ...(row.edits === null ? {} : { edits: row.edits }),
    ...(row.deletes === null ? {} : { deletes: row.deletes }),
  };
  return { seq: row.seq, message, state: row.state, job: row.job, error: row.error };
}

export function findMessage(store: Store, platform: string, id: string): InboxRow | undefined {
  const found = sql(store, `SELECT ${columns} WHERE inbox.platform = ? AND inbox.id = ?`).get(
    platform,
    id,
  );
  return found === undefined ? undefined : toRow(store, found);
}

/** Messages in a state, oldest by the platform's time. */
export function messagesIn(store: Store, state: InboxState): readonly InboxRow[] {
  // needless but for the partial index, which is used only where its own condition stands
  const few = state === "done" ? "" : "AND state <> 'done'";
  const rows = sql(store, `SELECT ${columns} WHERE state = ? ${few} ORDER BY instant, seq`).all(
    state,
  );
  return rows.map((row) => toRow(store, row));
}

/** Messages of a channel that were worked on already and are younger than one, oldest first. */
export function messagesAfter(
  store: Store,
  message: Message,
  withinMs: number,
): readonly InboxRow[] {
  const instant = Date.parse(message.at);
  const rows = sql(
    store,
    `SELECT ${columns} WHERE inbox.platform = ? AND channel = ? AND instant > ? AND instant <= ?
       AND state IN ('done', 'waiting') ORDER BY instant, seq`,
  ).all(message.platform, message.channel, instant, instant + withinMs);
  return rows.map((row) => toRow(store, row));
}

/** Whether a message was rewritten or removed by one that was worked on. */
export function wasChanged(store: Store, message: Message): boolean {
  // one question an index: asked together they look through all that the platform ever sent
  const of = [message.platform, message.id] as const;
  return (
    sql(
      store,
      "SELECT 1 FROM inbox WHERE state = 'done' AND platform = ? AND edits = ? LIMIT 1",
    ).get(...of) !== undefined ||
    sql(
      store,
      "SELECT 1 FROM inbox WHERE state = 'done' AND platform = ? AND deletes = ? LIMIT 1",
    ).get(...of) !== undefined
  );
}

/** Edits and deletions that came before their message are worked on now that it is there. */
export function wakeChanges(store: Store, message: Message): void {
  sql(
    store,
    `UPDATE inbox SET state = 'new' WHERE state = 'waiting' AND state <> 'done' AND platform = ? AND (edits = ? OR deletes = ?)`,
  ).run(message.platform, message.id, message.id);
}

/** The next message to work on. */
export function nextMessage(store: Store): InboxRow | undefined {
  const row = sql(
    store,
    `SELECT ${columns} WHERE state = 'new' AND state <> 'done' ORDER BY instant, seq LIMIT 1`,
  ).get();
  return row === undefined ? undefined : toRow(store, row);
}

export function markMessage(
  store: Store,
  message: Message,
  mark: { readonly state: InboxState; readonly job?: number | null; readonly error?: string },
): void {
  sql(store, "UPDATE inbox SET state = ?, job = ?, error = ? WHERE platform = ? AND id = ?").run(
    mark.state,
    mark.job ?? null,
    mark.error ?? null,
    message.platform,
    message.id,
  );
}

/** Moves a platform's place in a conversation, in the transaction that keeps its messages. */
export function moveCursor(
  store: Store,
  cursor: { readonly platform: string; readonly conversation: string; readonly value: string },
): void {
  sql(
    store,
    `INSERT INTO cursor (platform, conversation, value) VALUES (?, ?, ?)
     ON CONFLICT (platform, conversation) DO UPDATE SET value = excluded.value`,
  ).run(cursor.platform, cursor.conversation, cursor.value);
}

export function readCursor(
  store: Store,
  platform: string,
  conversation: string,
): string | undefined {
  const value = sql(
    store,
    "SELECT value FROM cursor WHERE platform = ? AND conversation = ?",
  ).pluck();
  return z.string().optional().parse(value.get(platform, conversation));
}

/** Whether a later edit or a deletion of the same message was worked on before this edit. */
export function isOvertaken(store: Store, message: Message): boolean {
  if (message.edits === undefined) return false;
  const { platform, edits, id } = message;
  const instant = Date.parse(message.at);
  return changing.some(
    (text) => sql(store, text).get(platform, edits, id, instant, instant, id) !== undefined,
  );
}

const later = `AND id <> ? AND (instant > ? OR (instant = ? AND id > ?))
  AND state IN ('done', 'waiting') LIMIT 1`;
// one question an index, as in `wasChanged`
const changing = [
  `SELECT 1 FROM inbox WHERE platform = ? AND edits = ? ${later}`,
  `SELECT 1 FROM inbox WHERE platform = ? AND deletes = ? ${later}`,
] as const;

const heardRows = z.array(z.object({ handle: z.string(), last: z.number().nullable() }));

/** When each person was heard of last (ms), of what was worked on. */
export function lastHeard(store: Store): Map<string, number> {
  const rows = sql(
    store,
    `SELECT handle, (SELECT instant FROM inbox WHERE person = person.id
       AND state IN ('done', 'waiting') ORDER BY instant DESC LIMIT 1) AS last FROM person`,
  ).all();
  const heard = new Map<string, number>();
  for (const { handle, last } of heardRows.parse(rows)) {
    if (last !== null) heard.set(handle, Math.max(heard.get(handle) ?? last, last));
  }
  return heard;
}

const roleRows = z.array(
  z.object({ handle: z.string(), role: z.enum(["tech", "dispatcher", "office"]).nullable() }),
);

/** The role in which each person last wrote something that was filed. */
export function lastRoles(store: Store): ReadonlyMap<string, Message["role"]> {
  const rows = sql(
    store,
    `SELECT handle, (SELECT role FROM inbox WHERE person = person.id AND job IS NOT NULL
       ORDER BY instant DESC LIMIT 1) AS role FROM person`,
  ).all();
  return new Map(
    roleRows.parse(rows).flatMap(({ handle, role }) => (role === null ? [] : [[handle, role]])),
  );
}

/** What the same person said next in the same place and still waits, until a moment (ms): the next one. */
export function waitingAfter(store: Store, message: Message, untilMs: number): readonly InboxRow[] {
  const rows = sql(
    store,
    // his later messages are few, those that wait may be many
    `SELECT ${columns} WHERE +state = 'new' AND instant >= ? AND instant <= ?
     AND inbox.person = (SELECT id FROM person WHERE platform = ? AND handle = ?)
     AND channel = ? AND thread IS ? ORDER BY instant, seq LIMIT 1`,
  ).all(
    Date.parse(message.at),
    untilMs,
    message.platform,
    message.person,
    message.channel,
    message.thread ?? null,
  );
  return rows.map((row) => toRow(store, row));
}
