import { z } from "zod";
import { type Store, sql } from "./store.ts";

/** One export that was made of a scope ("day 2026-05-12", "job 14"). */
export interface Revision {
  readonly revision: number;
  /** how many entries the store had, of all jobs */
  readonly entries: number;
  readonly digest: string;
  /** fingerprint of what was exported */
  readonly content: string;
}

export interface Settled {
  readonly now: Revision;
  /** the export before it, which the list of changes counts from */
  readonly before?: Revision;
}

const rows = z.array(
  z.object({
    revision: z.number(),
    entries: z.number(),
    digest: z.string(),
    content: z.string(),
  }),
);

/**
 * The revision of an export: the last one again where it would say the same, else the next, which is
 * kept. A store that cannot be written counts without keeping.
 */
export function settleRevision(
  store: Store,
  scope: string,
  made: Omit<Revision, "revision">,
): Settled {
  const [last, earlier] = rows.parse(
    sql(
      store,
      "SELECT revision, entries, digest, content FROM export WHERE scope = ? ORDER BY revision DESC LIMIT 2",
    ).all(scope),
  );
  if (last?.content === made.content) {
    return { now: last, ...(earlier === undefined ? {} : { before: earlier }) };
  }
  const now = { revision: (last?.revision ?? 0) + 1, ...made };
  if (!store.db.readonly) {
    sql(
      store,
      "INSERT INTO export (scope, revision, entries, digest, content) VALUES (?, ?, ?, ?, ?)",
    ).run(scope, now.revision, now.entries, now.digest, now.content);
  }
  return { now, ...(last === undefined ? {} : { before: last }) };
}
