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

/** So near is the same figure again; common practice, no source. */
const sameShare = 0.05;
/** So far from it is another one's. */
const otherShare = 0.15;

/**
 * "Now 14.6" behind 209 V and 6.1 A: where the last one's is far off, the quantity whose value is near.
 * "120 now" behind "suction 118, od 95": of what the last message told the one that it hardly moved from.
 */
export function nearestFirst(
  draft: Draft,
  shaped: readonly Reading[],
  told: readonly Reading[],
): readonly Reading[] {
  const [first] = shaped;
  if (first === undefined || draft.points !== undefined) return shaped;
  const off = (one: Reading): number => Math.abs(ratio(draft.value, one) - 1);
  const near = (one: Reading): boolean => isNear(draft.value, one);
  const same = shaped.filter((one) => told.includes(one) && off(one) <= sameShare);
  const [only] = same;
  if (only !== undefined && same.length === 1 && off(first) > otherShare) return [only, ...shaped];
  if (near(first)) return shaped;
  const [closest, ...others] = shaped.filter(near);
  return closest === undefined || others.length > 0 ? shaped : [closest, ...shaped];
}
