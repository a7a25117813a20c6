import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { role } from "../word.ts";

/** Names the rule of numerals that number the items of a list. */
export const LIST = "<number>) <item>";

/** Small looks around an item that several rules take; no rule knows another. */
export function textAt(items: readonly Item[], i: number): string {
  return items[i]?.text ?? "";
}

export function isFree(item: Item | undefined): item is Item {
  return item !== undefined && item.owner === undefined;
}

/** A number that no rule took. */
export function freeNumber(item: Item | undefined): item is Item {
  return item !== undefined && item.kind === itemKind.number && item.owner === undefined;
}

/** A whole number without a unit that no rule took, from 1 to `most`: a count, a terminal, a place in a row. */
export function isOrdinalUpTo(item: Item | undefined, most: number): item is Item {
  return (
    freeNumber(item) &&
    item.unit === undefined &&
    Number.isInteger(item.value) &&
    item.value >= 1 &&
    item.value <= most
  );
}

/** Index of the nearest item before `i` whose text is in the set, over small words alone. */
export function wordBefore(
  items: readonly Item[],
  i: number,
  words: ReadonlySet<string>,
  far: number,
): number {
  for (let at = i - 1; at >= 0 && at >= i - far; at--) {
    const item = items[at];
    if (item === undefined || isStrongBreak(item)) return -1;
    if (words.has(item.text)) return at;
    if (item.kind === itemKind.number && item.owner === undefined) return -1;
  }
  return -1;
}

export function wordBehind(
  items: readonly Item[],
  i: number,
  words: ReadonlySet<string>,
  far: number,
): number {
  for (let at = i + 1; at < items.length && at <= i + far; at++) {
    const item = items[at];
    if (item === undefined || isStrongBreak(item)) return -1;
    if (words.has(item.text)) return at;
    if (item.kind === itemKind.number && item.owner === undefined) return -1;
  }
  return -1;
}

const small = role.article | role.only | role.is | role.about | role.preposition;

/** Does the item add nothing of its own? */
export function isSmall(item: Item | undefined): boolean {
  return (
    item !== undefined &&
    item.kind === itemKind.word &&
    (item.roles & small) !== 0 &&
    item.label === undefined
  );
}

/** End of a run of glued items from `i`: a code, a date, a model number. */
export function gluedEnd(items: readonly Item[], i: number): number {
  let end = i + 1;
  while (end < items.length && items[end]?.glued === true && items[end]?.kind !== itemKind.line)
    end++;
  const last = items[end - 1];
  return end > i + 1 && last?.kind === itemKind.sign && ".,;!?".includes(last.text) ? end - 1 : end;
}

const lost = /^(?:out|dead|open|gone|missing|down|off|lost|bad|burnt|weak)$/;

/** "20.1 20.3 0, one leg out": which of them is not told, and nothing is measured by it. */
export function legLost(items: readonly Item[], i: number): boolean {
  const leg = items[i]?.value === 1 && /^(?:leg|phase|line)$/.test(textAt(items, i + 1));
  return leg && lost.test(textAt(items, i + 2));
}

/** The items of a stretch of the note's letters, as a range. */
export function rangeOf(
  items: readonly Item[],
  from: number,
  to: number,
): readonly [number, number] {
  const first = items.findIndex((item) => item.from >= from);
  const behind = items.findIndex((item) => item.from >= to);
  return [first, behind < 0 ? items.length : behind];
}

/** "3.5 hrs plus 1 drive", "2 hr + .5 travel": hours of a time sheet, where the way's are told beside them. */
export function besideTravel(items: readonly Item[], i: number): boolean {
  const [joint, count, way] = items.slice(i + 1, i + 4);
  if (items[i]?.unit?.figure !== "h" || !/^(?:plus|\+|and|&|,)$/.test(joint?.text ?? ""))
    return false;
  const hours = count?.unit === undefined || count.unit.figure === "h";
  return (
    hours && count?.kind === itemKind.number && /^(?:drive|driving|travel)$/.test(way?.text ?? "")
  );
}
