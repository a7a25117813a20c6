import type { Reading } from "../model.ts";
import type { Draft } from "./draft.ts";

/** How many times a value is what was read before; 1 where that has no figure. */
export function ratio(value: number, reading: Reading): number {
  const figure = Number(reading.figure.number);
  if (Number.isNaN(figure) || figure === 0 || value === 0) return 1;
  return Math.abs(value / figure);
}

/** Is a value within three times of what was read before? */
export function isNear(value: number, reading: Reading): boolean {
  const far = ratio(value, reading);
  return far > 1 / 3 && far < 3;
}

/** "Now 14.6" behind 209 V and 6.1 A: where the last one's is far off, the quantity whose value is near. */
export function nearestFirst(draft: Draft, shaped: readonly Reading[]): readonly Reading[] {
  const [first] = shaped;
  const near = (one: Reading): boolean => isNear(draft.value, one);
  if (first === undefined || draft.points !== undefined || near(first)) return shaped;
  const [closest, ...others] = shaped.filter(near);
  return closest === undefined || others.length > 0 ? shaped : [closest, ...shaped];
}
