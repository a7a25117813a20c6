import type { Reading } from "../model.ts";
import type { Draft } from "./draft.ts";

/** How many times a value is what was read before; 1 where that has no figure. */
export function ratio(value: number, reading: Reading): number {
  const figure = Number(reading.figure.number);
  if (Number.isNaN(figure) || figure === 0 || value === 0) return 1;
  return Math.abs(value / figure);
}

/** "Now 14.6" behind 209 V and 6.1 A: where the last one's is far off, the quantity whose value is near. */
export function nearestFirst(draft: Draft, shaped: readonly Reading[]): readonly Reading[] {
  const [first] = shaped;
  const isNear = (one: Reading): boolean =>
    ratio(draft.value, one) > 1 / 3 && ratio(draft.value, one) < 3;
  if (first === undefined || draft.points !== undefined || isNear(first)) return shaped;
  const [near, ...others] = shaped.filter(isNear);
  return near === undefined || others.length > 0 ? shaped : [near, ...shaped];
}
