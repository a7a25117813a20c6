import { type Item, itemKind } from "../item.ts";
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

/** "vac at 300, rise 40 in 10 min": by how much, for nothing rises to less than it was. */
function riseOf(items: readonly Item[], i: number): boolean {
  if (textAt(items, i - 1) !== "rise") return false;
  const before = items.findLastIndex(({ kind }, at) => at < i && kind === itemKind.number);
  const [was, is] = [items[before], items[i]];
  if (was === undefined || is === undefined || was.value <= is.value) return false;
  const dimension = was.unit?.dimension;
  if (dimension === "pressure" || dimension === "low_pressure") return true;
  if (dimension !== undefined) return false;
  return items
    .slice(Math.max(0, before - 3), before)
    .some(({ label }) => label?.quantity === "vacuum" || label?.hint === "pressure");
}

/** Where the amount ends: with the time that it took, "rise 40 in 10 min". */
export function withTime(items: readonly Item[], i: number): number {
  const led = /^(?:in|over)$/.test(textAt(items, i + 1));
  return led && items[i + 2]?.unit?.dimension === "time" ? i + 3 : i + 1;
}

/** "head climbed 40 psi", "gained 2 amps": by how much. */
export function changedBy(note: Note, item: Item, i: number): boolean {
  if (riseOf(note.items, i)) return true;
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

/** "about 60 lb lost", "60 lb leaked out": what the machine has no more. */
export function isLost(items: readonly Item[], i: number): boolean {
  const [next, behind] = [textAt(items, i + 1), textAt(items, i + 2)];
  return /^(?:lost|missing|leaked)$/.test(next) || (/^(?:was|is)$/.test(next) && behind === "lost");
}
