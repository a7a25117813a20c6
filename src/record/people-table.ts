import { z } from "zod";
import { type Store, sql } from "./store.ts";

/** People stand in entries by number; their names stand only here. */
const idRow = z.object({ id: z.number() });
const handleRow = z.object({ id: z.number(), handle: z.string() });

export function personId(store: Store, platform: string, handle: string): number {
  sql(store, "INSERT OR IGNORE INTO person (platform, handle) VALUES (?, ?)").run(platform, handle);
  const found = sql(store, "SELECT id FROM person WHERE platform = ? AND handle = ?");
  return idRow.parse(found.get(platform, handle)).id;
}

export function peopleById(store: Store): ReadonlyMap<number, string> {
  const rows = z.array(handleRow).parse(sql(store, "SELECT id, handle FROM person").all());
  return new Map(rows.map((row) => [row.id, row.handle]));
}
