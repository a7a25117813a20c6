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
  const heat = /^(?:superheat|subcooling)$/.test(items[left + 1]?.label?.quantity ?? "");
  return heat || (items[left]?.value ?? 0) > (items[to]?.value ?? 0);
}

/** "21 SH 9 SC amps …", "21 superheat and 9 subcooling …": each of the two right behind its figure. */
function bothHeats(one: Item | undefined, other: Item | undefined): boolean {
  const heats = [one, other].map((item) => item?.label?.quantity ?? "");
  return /^(?:superheat subcooling|subcooling superheat)$/.test(heats.join(" "));
}

/** The second of them, whatever follows, where no name stands before the first figure. */
export function secondOfHeats(items: readonly Item[], left: number, next: number): boolean {
  const and = items[left - 1]?.text === "and" ? 1 : 0;
  const figure = items[left - and - 2];
  const first = items[left - and - 3]?.label?.quantity ?? "";
  return (
    figure?.kind === itemKind.number &&
    bothHeats(items[left - and - 1], items[next]) &&
    (and > 0 || !isLoneNumber(items, next + 1)) &&
    !/^(?:superheat|subcooling)$/.test(first)
  );
}

/** A number that is no first of a row and has no unit of its own. */
function isLoneNumber(items: readonly Item[], at: number): boolean {
  const item = items[at];
  return item?.kind === itemKind.number && item.unit === undefined && items[at + 1]?.text !== "/";
}

const isLow = (item: Item | undefined): boolean => item?.label?.place === "suction";
const isHigh = (item: Item | undefined): boolean => item?.label?.place === "discharge";

/** Does a clause begin with the figure at `left`? */
function begins(items: readonly Item[], left: number): boolean {
  const before = items[left - 1];
  return (
    before === undefined ||
    isStrongBreak(before) ||
    before.kind === itemKind.subject ||
    /^[,:|-]$/.test(before.text)
  );
}

/** "11 suct 108 disch, outdoor 27": both gauges behind their figures, whatever leads the next. */
export function sidesBehind(items: readonly Item[], left: number, next: number): boolean {
  if (next !== left + 1 || items[left]?.unit !== undefined) return false;
  const first = isLow(items[next]) && isHigh(items[left + 3]) && begins(items, left);
  if (first) return isLoneNumber(items, left + 2) && !isLoneNumber(items, left + 4);
  const second = isHigh(items[next]) && isLow(items[left - 1]) && begins(items, left - 2);
  return second && isLoneNumber(items, left - 2) && !isLoneNumber(items, left + 2);
}

/** "amps 14.1/14.2/14.0, 19 superheat 5 subcooling", "circuit B 6 SH 13 SC": both heats behind their figures. */
export function firstOfHeats(items: readonly Item[], left: number, next: number): boolean {
  const figure = items[left + 2];
  if (next !== left + 1 || items[left]?.unit !== undefined) return false;
  return (
    begins(items, left) &&
    isLoneNumber(items, left + 2) &&
    figure !== undefined &&
    bothHeats(items[next], items[left + 3]) &&
    !isLoneNumber(items, left + 4)
  );
}

/** "amps 18.7 18.9 and 18.6 suction line 40 …": the last of a row begins no clause. */
function endsRow(items: readonly Item[], at: number): boolean {
  const [before, joint, own] = items.slice(Math.max(0, at - 2), at + 1);
  if (before?.kind !== itemKind.number || !/^(?:and|&|,)$/.test(joint?.text ?? "")) return false;
  const share = (own?.value ?? Number.NaN) / before.value;
  return share > 0.75 && share < 1.33;
}

/** "suction 118 line 52, 345 head 96 liquid", "118/340 21 SH 17 SC": a clause that begins with its number and ends with a label has each behind its number. */
export function turnedClause({ items, left, from, to }: Gap, next: number): boolean {
  if (next === from && secondOfHeats(items, left.index, next)) return true;
  const named = left.before.some((at) => items[at]?.kind !== itemKind.subject);
  if (next !== from || next + 1 !== to || named) return false;
  if (endsRow(items, left.index)) return false;
  // "228 sh 12 sc 8": where a figure follows, each leads its own
  if (bothHeats(items[next], items[to + 1]) && items[to + 2]?.kind !== itemKind.number) return true;
  const behindPair =
    items[left.index - 1]?.kind === itemKind.number && items[left.index - 2]?.text === "/";
  const mark = /^[:=-]$/.test(items[left.index - 1]?.text ?? "");
  const behindName = items[left.index - (mark ? 2 : 1)]?.kind === itemKind.subject;
  if (
    !behindPair &&
    !behindName &&
    !isBreak(items[left.index - 1]) &&
    !leadsOn(items, left.index, to)
  )
    return false;
  let last = to;
  while (!isBreak(items[last + 1])) last++;
  const end = items[last];
  return end?.kind === itemKind.label && end.label?.rating === undefined && last > to;
}
