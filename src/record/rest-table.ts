import { z } from "zod";
import type { Job } from "../model.ts";
import { plainTag } from "./names.ts";
import { type Store, sql } from "./store.ts";

/** What is kept at hand of a job at rest: enough to route a message, and to find it. */
export interface Card extends Pick<Job, "job" | "site" | "equipment" | "opened" | "people"> {
  readonly assigned?: string;
  /** instants of its first and last entry */
  readonly first: number;
  readonly last: number;
  /** a compressor was fitted */
  readonly compressor: boolean;
  /** kg that it put into each cylinder, less what it took out */
  readonly gas: readonly (readonly [number: string, kg: number])[];
}

const factsShape = z.object({
  opened: z.string(),
  people: z.array(z.string()),
  assigned: z.string().optional(),
  gas: z.array(z.tuple([z.string(), z.number()])),
});
const rowShape = z.object({
  job: z.number(),
  site: z.string().nullable(),
  equipment: z.string().nullable(),
  first: z.number(),
  last: z.number(),
  compressor: z.number(),
  facts: z.string(),
});

const columns = "job, site, equipment, first, last, compressor, facts";

function toCard(found: unknown): Card {
  const { facts, compressor, ...row } = rowShape.parse(found);
  const { assigned, ...more } = factsShape.parse(JSON.parse(facts));
  return {
    ...row,
    ...more,
    compressor: compressor === 1,
    ...(assigned === undefined ? {} : { assigned }),
  };
}

/** Puts a job to rest; it is no longer read when the store is opened. */
export function putToRest(store: Store, card: Card): void {
  const { job, site, equipment, opened, first, last, compressor, people, assigned, gas } = card;
  const facts = JSON.stringify({ opened, people, assigned, gas });
  const unit = equipment === null ? null : plainTag(equipment);
  sql(store, "INSERT OR REPLACE INTO at_rest VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)").run(
    job,
    site,
    equipment,
    unit,
    Date.parse(opened),
    first,
    last,
    compressor ? 1 : 0,
    facts,
  );
  for (const [number, kg] of gas) {
    sql(store, "INSERT OR REPLACE INTO gas_at_rest VALUES (?, ?, ?)").run(number, job, kg);
  }
  sql(store, "DELETE FROM at_hand WHERE job = ?").run(job);
}

/** Brings a job back to hand: something was added to it, or taken out of its words. */
export function takeFromRest(store: Store, job: number): void {
  sql(store, "DELETE FROM at_rest WHERE job = ?").run(job);
  sql(store, "DELETE FROM gas_at_rest WHERE job = ?").run(job);
  sql(store, "INSERT OR IGNORE INTO at_hand VALUES (?)").run(job);
}

export function cardOf(store: Store, job: number): Card | undefined {
  const found = sql(store, `SELECT ${columns} FROM at_rest WHERE job = ?`).get(job);
  return found === undefined ? undefined : toCard(found);
}

/** Jobs at rest at a site, the newest first: at most so many. */
export function cardsAt(store: Store, site: string, most: number): readonly Card[] {
  return sql(store, `SELECT ${columns} FROM at_rest WHERE site = ? ORDER BY opened DESC LIMIT ?`)
    .all(site, most)
    .map(toCard);
}

/** Jobs at rest on units of a tag, wherever they stand, the newest first: at most so many. */
export function cardsOn(store: Store, tag: string, most: number): readonly Card[] {
  return sql(store, `SELECT ${columns} FROM at_rest WHERE unit = ? ORDER BY opened DESC LIMIT ?`)
    .all(plainTag(tag), most)
    .map(toCard);
}

/** Jobs at rest on one unit, the newest first: at most so many. */
export function cardsOfUnit(
  store: Store,
  where: { readonly site: string; readonly equipment: string },
  most: number,
): readonly Card[] {
  return sql(
    store,
    `SELECT ${columns} FROM at_rest WHERE site = ? AND unit = ? ORDER BY opened DESC LIMIT ?`,
  )
    .all(where.site, plainTag(where.equipment), most)
    .map(toCard);
}

/** Jobs at rest that something was said for between two instants. */
export function cardsBetween(store: Store, from: number, to: number): readonly Card[] {
  return sql(store, `SELECT ${columns} FROM at_rest WHERE last >= ? AND first <= ? ORDER BY job`)
    .all(from, to)
    .map(toCard);
}

/** Numbers of all jobs at rest. */
export function numbersAtRest(store: Store): readonly number[] {
  return z
    .array(z.number())
    .parse(sql(store, "SELECT job FROM at_rest ORDER BY job").pluck().all());
}

const unitShape = z.object({ site: z.string().nullable(), equipment: z.string().nullable() });

/** Sites and units that jobs at rest brought up. */
export function unitsAtRest(store: Store): readonly z.output<typeof unitShape>[] {
  const rows = sql(store, "SELECT DISTINCT site, equipment FROM at_rest").all();
  return rows.map((row) => unitShape.parse(row));
}

/** kg in a cylinder from jobs at rest. */
export function gasAtRest(store: Store, number: string): number {
  const sum = sql(store, "SELECT coalesce(sum(kg), 0.0) FROM gas_at_rest WHERE number = ?").pluck();
  return z.number().parse(sum.get(number));
}
