import { isStrongBreak, isWeakBreak } from "./breaks.ts";
import type { Gap } from "./goes-left.ts";
import { type Item, itemKind } from "./item.ts";

function isBreak(item: Item | undefined): boolean {
  return item === undefined || isStrongBreak(item) || isWeakBreak(item);
}

/** "suction 100 line 36 300 head 88 liquid": behind a label's number the higher of the two is the head's. */
function leadsOn(items: readonly Item[], left: number, to: number): boolean {
  const [label, number] = [items[left - 2], items[left - 1]];
  if (label?.kind !== itemKind.label || number?.kind !== itemKind.number) return false;
  return (items[left]?.value ?? 0) > (items[to]?.value ?? 0);
}

/** "suction 118 line 52, 345 head 96 liquid": a clause that begins with its number and ends with a label has each behind its number. */
export function turnedClause({ items, left, from, to }: Gap, next: number): boolean {
  if (next !== from || next + 1 !== to || left.before.length > 0) return false;
  if (!isBreak(items[left.index - 1]) && !leadsOn(items, left.index, to)) return false;
  let last = to;
  while (!isBreak(items[last + 1])) last++;
  const end = items[last];
  return end?.kind === itemKind.label && end.label?.rating === undefined && last > to;
}
