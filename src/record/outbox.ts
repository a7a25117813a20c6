import { z } from "zod";
import { type Store, sql } from "./store.ts";

/** A file of a row, kept under its hash until it is sent. */
export interface Attached {
  readonly name: string;
  readonly type: string;
  readonly size: number;
  readonly sha256: string;
}

/**
 * What is to be said. An id follows from what it answers (`reply:<platform>:<message>:0`), never
 * from a counter, so that the same work done again gives the same id and is not said twice.
 */
export interface Outgoing {
  readonly id: string;
  readonly platform: string;
  readonly channel: string;
  readonly thread?: string;
  readonly kind: "reply" | "board" | "clock" | "alert" | "operator";
  /** the message that it answers */
  readonly answers?: string;
  readonly text: string;
  readonly files: readonly Attached[];
  /** outbox id of what it stands for */
  readonly edits?: string;
  /** JSON for the sender and later work: a clock's job and due time, caution ids */
  readonly detail?: string;
}

export type OutboxState = "pending" | "sending" | "sent" | "failed";

export interface OutboxRow extends Outgoing {
  readonly state: OutboxState;
  /** the body as it went out first, so that a resend is the same */
  readonly wire?: string;
  readonly attempt_at?: string;
  readonly not_before?: string;
  /** the platform's id of what was posted */
  readonly remote_id?: string;
}

const filesSchema = z.array(
  z.object({ name: z.string(), type: z.string(), size: z.number(), sha256: z.string() }),
);
const optional = z.string().nullable();
const rowSchema = z.object({
  id: z.string(),
  platform: z.string(),
  channel: z.string(),
  thread: optional,
  kind: z.enum(["reply", "board", "clock", "alert", "operator"]),
  answers: optional,
  text: z.string(),
  files: z.string(),
  edits: optional,
  detail: optional,
  state: z.enum(["pending", "sending", "sent", "failed"]),
  wire: optional,
  attempt_at: optional,
  not_before: optional,
  remote_id: optional,
});

const columns = `id, platform, channel, thread, kind, answers, text, files, edits, detail, state,
  wire, attempt_at, not_before, remote_id`;

function toRow(found: unknown): OutboxRow {
  const { files, ...row } = rowSchema.parse(found);
  const { id, platform, channel, kind, text, state } = row;
  return {
    id,
    platform,
    channel,
    kind,
    text,
    state,
    files: filesSchema.parse(JSON.parse(files)),
    ...(row.thread === null ? {} : { thread: row.thread }),
    ...(row.answers === null ? {} : { answers: row.answers }),
    ...(row.edits === null ? {} : { edits: row.edits }),
    ...(row.detail === null ? {} : { detail: row.detail }),
    ...(row.wire === null ? {} : { wire: row.wire }),
    ...(row.attempt_at === null ? {} : { attempt_at: row.attempt_at }),
    ...(row.not_before === null ? {} : { not_before: row.not_before }),
    ...(row.remote_id === null ? {} : { remote_id: row.remote_id }),
  };
}

/** Puts something in the outbox; nothing happens where its id is there already. */
export function putOut(store: Store, out: Outgoing): void {
  sql(
    store,
    `INSERT OR IGNORE INTO outbox
       (id, seq, platform, channel, thread, kind, answers, text, files, edits, detail)
     VALUES (?, (SELECT coalesce(max(seq), 0) + 1 FROM outbox), ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
  ).run(
    out.id,
    out.platform,
    out.channel,
    out.thread ?? null,
    out.kind,
    out.answers ?? null,
    out.text,
    JSON.stringify(out.files),
    out.edits ?? null,
    out.detail ?? null,
  );
}

/** What is still to be sent, in order. */
export function unsent(store: Store, platform: string): readonly OutboxRow[] {
  return sql(
    store,
    `SELECT ${columns} FROM outbox WHERE platform = ? AND state IN ('pending', 'sending')
       AND state <> 'sent' ORDER BY seq`,
  )
    .all(platform)
    .map(toRow);
}

/** Everything said to one message, oldest first. */
export function answersTo(store: Store, platform: string, message: string): readonly OutboxRow[] {
  return sql(store, `SELECT ${columns} FROM outbox WHERE platform = ? AND answers = ? ORDER BY seq`)
    .all(platform, message)
    .map(toRow);
}

/** Everything ever said of one kind, oldest first. */
export function saidOf(store: Store, kind: Outgoing["kind"]): readonly OutboxRow[] {
  return sql(store, `SELECT ${columns} FROM outbox WHERE kind = ? ORDER BY seq`)
    .all(kind)
    .map(toRow);
}

/** What the replies on a job keep besides their text, oldest first. */
export function detailsOn(store: Store, job: number): readonly string[] {
  const rows = sql(
    store,
    `SELECT detail FROM outbox WHERE kind = 'reply' AND json_extract(detail, '$.job') = ? ORDER BY seq`,
  );
  return z.array(z.string()).parse(rows.pluck().all(job));
}

/** How many rows of a kind went to a channel, and the newest. */
export function saidIn(
  store: Store,
  where: Pick<Outgoing, "kind" | "platform" | "channel">,
): { readonly count: number; readonly last?: OutboxRow } {
  const { kind, platform, channel } = where;
  const rows = sql(
    store,
    `SELECT ${columns} FROM outbox WHERE platform = ? AND channel = ? AND kind = ? ORDER BY seq DESC LIMIT 1`,
  ).all(platform, channel, kind);
  const count = sql(
    store,
    "SELECT count(*) FROM outbox WHERE platform = ? AND channel = ? AND kind = ?",
  ).pluck();
  const [row] = rows;
  const number = z.number().parse(count.get(platform, channel, kind));
  return row === undefined ? { count: number } : { count: number, last: toRow(row) };
}

export function findOut(store: Store, id: string): OutboxRow | undefined {
  const found = sql(store, `SELECT ${columns} FROM outbox WHERE id = ?`).get(id);
  return found === undefined ? undefined : toRow(found);
}

/** Records what became of a row. */
export function markOut(
  store: Store,
  id: string,
  mark: {
    readonly state: OutboxState;
    readonly wire?: string;
    readonly attempt_at?: string;
    readonly not_before?: string;
    readonly remote_id?: string;
  },
): void {
  sql(
    store,
    `UPDATE outbox SET state = ?, wire = coalesce(?, wire), attempt_at = coalesce(?, attempt_at),
       not_before = ?, remote_id = coalesce(?, remote_id) WHERE id = ?`,
  ).run(
    mark.state,
    mark.wire ?? null,
    mark.attempt_at ?? null,
    mark.not_before ?? null,
    mark.remote_id ?? null,
    id,
  );
}
