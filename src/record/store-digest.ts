import { z } from "zod";
import { digestOf } from "./chain.ts";
import { type Store, sql } from "./store.ts";

const headsSchema = z.array(z.tuple([z.number(), z.number(), z.string()]));

/** The digest of everything written so far, made from each job's last entry alone; undefined of an empty store. */
export function storeDigest(store: Store): string | undefined {
  const rows = sql(
    store,
    `SELECT entry.job, entry.place, entry.hash FROM entry
       JOIN (SELECT job, max(place) AS place FROM entry GROUP BY job) AS head
         ON head.job = entry.job AND head.place = entry.place`,
  );
  const heads = headsSchema.parse(rows.raw().all());
  return heads.length === 0 ? undefined : digestOf([], heads);
}
