import { type Item, itemKind } from "./item.ts";

/** Minutes since midnight of "two thirty", or NaN where it is no clock's face. */
function faceOf(item: Item | undefined): number {
  if (item?.kind !== itemKind.number || !item.spoken || item.unit !== undefined) return Number.NaN;
  const { value } = item;
  if (!Number.isInteger(value) || value < 100 || value >= 1260 || value % 5 !== 0)
    return Number.NaN;
  return value % 100 < 60 ? Math.floor(value / 100) * 60 + (value % 100) : Number.NaN;
}

/** Minutes between two looks at the same thing at most; common practice, no source. */
const apart = { least: 10, most: 240 } as const;

/**
 * "two thirty box twelve three thirty box is two": two spoken clocks, each before the same word and its
 * figure, are when it was looked at.
 */
export function spokenSeries(items: readonly Item[]): void {
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
