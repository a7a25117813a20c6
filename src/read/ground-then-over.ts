import type { Gap } from "./goes-left.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** Ohm; a winding has no more, and an insulation that has so little is no insulation. Common practice, no source. */
const mostWinding = 30;

/** "windings 1.1 1.1 1.2 ground infinite": what has no end is the ground's, not the last winding's. */
export function groundThenOver({ items, left, to }: Gap, ground: number): boolean {
  if (items[to]?.kind !== itemKind.over) return false;
  const value = items[left.index];
  const ohms = value?.unit === undefined || value.unit.factor < 1e3;
  if (value?.kind !== itemKind.number || !ohms || value.value > mostWinding) return false;
  return items
    .slice(ground + 1, to)
    .every((item) => (item.roles & (role.is | role.article)) !== 0 && item.label === undefined);
}

function isBareNumber(item: Item | undefined): boolean {
  return item?.kind === itemKind.number && item.unit === undefined;
}

/** Ohms of a winding and megohms are that far apart at least; common practice, no source. */
const leastShare = 20;

/**
 * "windings 1.1 1.1 1.2 ground infinite", "windings 2.37 2.38 ohms to ground 231 219 meg": behind a winding's ohms
 * the ground is of the test to ground that follows.
 */
export function groundAhead({ items, from, to, left }: Gap, next: number): boolean {
  const [own, first] = [items[left.index], items[to]];
  if (next !== from || next + 1 !== to || own === undefined || first === undefined) return false;
  if (first.kind === itemKind.over) return true;
  if (first.kind !== itemKind.number || first.value < own.value * leastShare) return false;
  if (own.unit !== undefined && own.unit.figure !== "ohm") return false;
  let last = to;
  while (/^(?:,|and|\/)$/.test(items[last]?.text ?? "") || isBareNumber(items[last])) last++;
  const unit = items[last]?.unit;
  return unit?.dimension === "resistance" && unit.factor >= 1e6;
}
