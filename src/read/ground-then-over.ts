import type { Gap } from "./goes-left.ts";
import { itemKind } from "./item.ts";
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
