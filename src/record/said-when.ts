import { z } from "zod";
import type { Message } from "../model.ts";
import { type Store, sql } from "./store.ts";

const placed = z
  .object({
    seq: z.number(),
    id: z.string(),
    at: z.string(),
    instant: z.number(),
    channel: z.string(),
    thread: z.string().nullable(),
  })
  .optional();

/** When and where a message was said, without its words. */
export type Placed = NonNullable<z.output<typeof placed>>;

/** A person's message on a job that was worked on, `id` itself apart, and comes next before another. */
export function messageBefore(
  store: Store,
  of: Pick<Message, "platform" | "person" | "id"> & { readonly job: number },
  than: Pick<Placed, "instant" | "seq">,
): Placed | undefined {
  // a job's messages are few, a person's are not
  const row = sql(
    store,
    `SELECT seq, id, at, instant, channel, thread FROM inbox
     WHERE job = ? AND state = 'done' AND id <> ?
       AND +person = (SELECT id FROM person WHERE platform = ? AND handle = ?)
       AND (instant, seq) < (?, ?) ORDER BY instant DESC, seq DESC LIMIT 1`,
  ).get(of.job, of.id, of.platform, of.person, than.instant, than.seq);
  return placed.parse(row);
}

/** When a message was said, ISO. */
export function saidAt(store: Store, platform: string, id: string): string | undefined {
  const at = sql(store, "SELECT at FROM inbox WHERE platform = ? AND id = ?").pluck();
  return z.string().optional().parse(at.get(platform, id));
}
