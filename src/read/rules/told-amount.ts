import type { Item } from "../item.ts";
import type { Note } from "../note.ts";
import { roseBy } from "../rose-by.ts";
import { textAt } from "./near.ts";

/** How much of a unit a change may be and be told by its amount; common practice, no source. */
const mostBy: Readonly<Record<string, number>> = {
  psi: 80,
  bar: 6,
  kPa: 600,
  F: 30,
  C: 17,
  degrees: 30,
  K: 17,
  A: 6,
};

/** "head climbed 40 psi", "gained 2 amps": by how much. */
export function changedBy(note: Note, item: Item, i: number): boolean {
  const most = mostBy[item.unit?.figure ?? ""];
  return most !== undefined && item.value <= most && roseBy(note.items, i, note.plain);
}

/** "put in 1 lb 4, that makes 3 lb 12 total": what it comes to, no more of it. */
export function makesTotal({ items, context }: Note, i: number): boolean {
  const second = textAt(items, i - 1);
  const makes = /^(?:makes|brings|puts|totals|totalling|totaling)$/.test(second);
  const to = second === "to" ? 1 : 0;
  const brings =
    /^(?:makes|brings|puts)$/.test(textAt(items, i - 2 - to)) &&
    /^(?:it|us|that|her)$/.test(textAt(items, i - 1 - to));
  const thats =
    /^(?:thats|so)$/.test(second) && /^(?:total|altogether|all)$/.test(textAt(items, i + 1));
  if (!makes && !brings && !thats) return false;
  const before = items.some((other, at) => at < i && other.unit?.dimension === "mass");
  return before || context.readings.some(({ quantity }) => quantity === "mass");
}
