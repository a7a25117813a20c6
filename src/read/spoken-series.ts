import { type Item, itemKind } from "./item.ts";

/** Minutes since midnight of "two thirty", or NaN where it is no clock's face. */
function faceOf(item: Item | undefined): number {
  if (item?.kind !== itemKind.number || !item.spoken || item.unit !== undefined) return Number.NaN;
  const { value } = item;
  if (!Number.isInteger(value) || value < 100 || value >= 1260 || value % 5 !== 0)
    return Number.NaN;
  return value % 100 < 60 ? Math.floor(value / 100) * 60 + (value % 100) : Number.NaN;
}

/** Minutes between two looks at the same thing; common practice, no source. */
const apart = { least: 5, most: 240 } as const;

/** "three twenty five hundred and it's staying" behind microns: when it was looked at, and then what was read. */
function clockAhead(items: readonly Item[]): void {
  const [first, next, after] = items;
  if (first === undefined || Number.isNaN(faceOf(first)) || next?.kind !== itemKind.number) return;
  if (next.unit !== undefined && next.unit.figure !== "micron") return;
  if (after?.kind === itemKind.number) inTurn(items);
  else first.colon = true;
}

/** "three ten three fifty three thirty four hundred": a clock, what was read, the next clock, what was read then. */
function inTurn(items: readonly Item[]): void {
  const numbers = items.filter(({ kind }) => kind === itemKind.number);
  const clocks = numbers.filter((_, i) => i % 2 === 0);
  const rises = clocks.every((item, i) => {
    const before = clocks[i - 1];
    const gap = before === undefined ? apart.least : faceOf(item) - faceOf(before);
    return gap >= apart.least && gap <= apart.most;
  });
  if (numbers.length % 2 !== 0 || !rises || Number.isNaN(faceOf(clocks[0]))) return;
  for (const item of clocks) item.colon = true;
}

/**
 * "two thirty box twelve three thirty box is two": two spoken clocks, each before the same word and its
 * figure, are when it was looked at.
 */
export function spokenSeries(items: readonly Item[], vacuum: boolean): void {
  if (vacuum) clockAhead(items);
  const faces = items.flatMap((item, i) => {
    const next = items[i + 1];
    const label = next?.label?.place ?? next?.label?.quantity;
    const is = /^(?:is|was|at|now)$/.test(items[i + 2]?.text ?? "");
    const told = items[is ? i + 3 : i + 2]?.kind === itemKind.number;
    const minutes = faceOf(item);
    return Number.isNaN(minutes) || label === undefined || !told ? [] : [{ item, label, minutes }];
  });
  faces.forEach(({ item, label, minutes }, at) => {
    const next = faces[at + 1];
    if (next === undefined || next.label !== label) return;
    const gap = next.minutes - minutes;
    if (gap < apart.least || gap > apart.most) return;
    item.colon = true;
    next.item.colon = true;
  });
}
