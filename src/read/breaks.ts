import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** Where a sentence ends: a full stop, a line, a semicolon. */
export function isStrongBreak(item: Item): boolean {
  if (item.kind === itemKind.line) return true;
  if (item.kind !== itemKind.sign) return false;
  const { text } = item;
  return text === "." || text === ";" || text === "!" || text === "?" || text === "…";
}

/** Where a clause ends: a comma, or the end of its sentence. */
export function endsClause(item: Item): boolean {
  return item.text === "," || isStrongBreak(item);
}

/** Does a clause end between two items? */
export function isParted(items: readonly Item[], from: number, to: number): boolean {
  return items.slice(from + 1, to).some(endsClause);
}

/** Where the clause begins and ends that an item stands in. */
export function clauseAround(items: readonly Item[], index: number): readonly [number, number] {
  const from = items.slice(0, index).findLastIndex(endsClause) + 1;
  const to = items.findIndex((item, at) => at > index && endsClause(item));
  return [from, to < 0 ? items.length : to];
}

/** Where a thought may end: a comma, "and", "then", "but". */
export function isWeakBreak(item: Item): boolean {
  if (item.kind === itemKind.sign && (item.text === "," || item.text === "|")) return true;
  return (item.roles & (role.conjunction | role.next)) !== 0 && item.kind !== itemKind.over;
}

export function isPreposition(item: Item | undefined): boolean {
  return (
    item !== undefined && item.text !== "→" && (item.roles & (role.preposition | role.to)) !== 0
  );
}

export function afterBreak(items: readonly Item[], from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const item = items[i];
    if (item !== undefined && isStrongBreak(item)) return true;
  }
  return false;
}

export function lastBreak(items: readonly Item[], from: number, to: number): number {
  for (let i = to - 1; i >= from; i--) {
    const item = items[i];
    if (item !== undefined && isStrongBreak(item)) return i;
  }
  return -1;
}

/** Nothing more, or the end of the clause: "its done for, need a compressor". */
export const isEnd = (item: Item | undefined): boolean => item === undefined || endsClause(item);
