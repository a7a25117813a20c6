import { z } from "zod";
import { type Store, sql } from "./store.ts";

/** People stand in entries by number; their names stand only here. */
const idRow = z.object({ id: z.number() });
const handleRow = z.object({ id: z.number(), handle: z.string() });

export function personId(store: Store, platform: string, handle: string): number {
  const find = sql(store, "SELECT id FROM person WHERE platform = ? AND handle = ?");
  const known = find.get(platform, handle);
  if (known !== undefined) return idRow.parse(known).id;
  sql(store, "INSERT INTO person (platform, handle) VALUES (?, ?)").run(platform, handle);
  return idRow.parse(find.get(platform, handle)).id;
}

export function peopleById(store: Store): ReadonlyMap<number, string> {
  const rows = z.array(handleRow).parse(sql(store, "SELECT id, handle FROM person").all());
  return new Map(rows.map((row) => [row.id, row.handle]));
}
