import { z } from "zod";
import { findMessage, type InboxRow } from "./inbox.ts";
import { findOut, type OutboxRow } from "./outbox.ts";
import { type Store, sql } from "./store.ts";

/** Rows of one lane go out one after the other; a board does not wait for the answers of its channel. */
export interface Lane {
  readonly platform: string;
  readonly channel: string;
  readonly board: boolean;
}

const laneRow = z.object({ channel: z.string(), board: z.number() });
const text = z.string().optional();

/** The lanes in which something waits. */
export function waitingLanes(store: Store, platform: string): readonly Lane[] {
  const rows = sql(
    store,
    `SELECT DISTINCT channel, kind = 'board' AS board FROM outbox
     WHERE platform = ? AND state IN ('pending', 'sending') AND state <> 'sent'`,
  ).all(platform);
  return z
    .array(laneRow)
    .parse(rows)
    .map(({ channel, board }) => ({ platform, channel, board: board === 1 }));
}

/** What goes out next in a lane. */
export function nextOut(store: Store, lane: Lane): OutboxRow | undefined {
  const id = sql(
    store,
    `SELECT id FROM outbox WHERE platform = ? AND channel = ? AND state IN ('pending', 'sending') AND state <> 'sent'
     AND (kind = 'board') = ? ORDER BY seq LIMIT 1`,
  )
    .pluck()
    .get(lane.platform, lane.channel, Number(lane.board));
  const found = text.parse(id);
  return found === undefined ? undefined : findOut(store, found);
}

/** The newest row that stands under a platform's id of a post. */
export function outByRemote(
  store: Store,
  platform: string,
  remoteId: string,
): OutboxRow | undefined {
  const id = sql(
    store,
    "SELECT id FROM outbox WHERE platform = ? AND remote_id = ? ORDER BY seq DESC LIMIT 1",
  ).pluck();
  const found = text.parse(id.get(platform, remoteId));
  return found === undefined ? undefined : findOut(store, found);
}

/** Whether nothing was answered to the same person, in the same channel and thread, after a row. */
export function isLatestAnswer(store: Store, row: OutboxRow): boolean {
  const later = sql(
    store,
    `SELECT 1 FROM outbox AS later
       JOIN inbox AS theirs ON theirs.platform = later.platform AND theirs.id = later.answers
     WHERE later.platform = @platform AND later.channel = @channel AND later.thread IS @thread
       AND later.kind = 'reply' AND later.seq > (SELECT seq FROM outbox WHERE id = @id)
       AND theirs.person = (SELECT person FROM inbox WHERE platform = @platform AND id = @answers)`,
  ).get({
    id: row.id,
    platform: row.platform,
    channel: row.channel,
    thread: row.thread ?? null,
    answers: row.answers ?? null,
  });
  return later === undefined;
}

/** The newest board that was posted in a channel. */
export function lastBoard(store: Store, platform: string, channel: string): OutboxRow | undefined {
  const id = sql(
    store,
    `SELECT id FROM outbox WHERE platform = ? AND channel = ? AND kind = 'board' ORDER BY seq DESC LIMIT 1`,
  ).pluck();
  const found = text.parse(id.get(platform, channel));
  return found === undefined ? undefined : findOut(store, found);
}

/** The newest board that stands in a channel, whatever was refused since. */
export function standingBoard(
  store: Store,
  platform: string,
  channel: string,
): OutboxRow | undefined {
  const id = sql(
    store,
    `SELECT id FROM outbox WHERE platform = ? AND channel = ? AND kind = 'board'
       AND remote_id IS NOT NULL ORDER BY seq DESC LIMIT 1`,
  ).pluck();
  const found = text.parse(id.get(platform, channel));
  return found === undefined ? undefined : findOut(store, found);
}

/** Boards that were replaced say nothing any more: all but the newest two that went out are dropped. */
export function forgetBoards(store: Store, platform: string, channel: string): void {
  sql(
    store,
    `DELETE FROM outbox WHERE platform = @platform AND channel = @channel AND kind = 'board'
       AND state IN ('sent', 'failed') AND seq < (
         SELECT min(seq) FROM (SELECT seq FROM outbox WHERE platform = @platform
           AND channel = @channel AND kind = 'board' AND state = 'sent' ORDER BY seq DESC LIMIT 2))`,
  ).run({ platform, channel });
}

const idRow = z.array(z.string());

/** Messages of a channel since a moment (ms), oldest first. */
export function messagesSince(
  store: Store,
  where: { readonly platform: string; readonly channel: string },
  sinceMs: number,
): readonly InboxRow[] {
  const ids = sql(
    store,
    "SELECT id FROM inbox WHERE platform = ? AND channel = ? AND instant >= ? ORDER BY instant, seq",
  )
    .pluck()
    .all(where.platform, where.channel, sinceMs);
  return idRow.parse(ids).flatMap((id) => findMessage(store, where.platform, id) ?? []);
}

/** Counts for whoever watches over the program. */
export interface Backlog {
  /** messages not worked on yet */
  readonly new: number;
  /** messages whose work failed */
  readonly failed: number;
  readonly unsent: number;
  readonly refused: number;
}

const counts = z.object({
  new: z.number(),
  failed: z.number(),
  unsent: z.number(),
  refused: z.number(),
});

export function backlog(store: Store): Backlog {
  return counts.parse(
    sql(
      store,
      `SELECT (SELECT count(*) FROM inbox WHERE state = 'new' AND state <> 'done') AS new,
         (SELECT count(*) FROM inbox WHERE state = 'failed' AND state <> 'done') AS failed,
         (SELECT count(*) FROM outbox WHERE state IN ('pending', 'sending') AND state <> 'sent') AS unsent,
         (SELECT count(*) FROM outbox WHERE state = 'failed' AND state <> 'sent') AS refused`,
    ).get(),
  );
}
