import type { Reading } from "../model.ts";
import type { QuantityName } from "../quantities/list.ts";

/** Picking readings out of a scene. */

/** Its number, or undefined for text, over range and a range. */
export function numberOf(reading: Reading): number | undefined {
  return typeof reading.value === "number" && Number.isFinite(reading.value)
    ? reading.value
    : undefined;
}

/** Numbers of the readings that have one. */
export function numbersOf(readings: readonly Reading[]): number[] {
  return readings.flatMap((one) => numberOf(one) ?? []);
}

export function ofQuantity(readings: readonly Reading[], ...names: QuantityName[]): Reading[] {
  return readings.filter((one) => names.includes(one.quantity));
}

/** Only a lower bound: over range, "over 500". */
export function isBound(reading: Reading): boolean {
  return reading.over_range === true || reading.relation === ">" || reading.relation === ">=";
}

export function hasPoint(reading: Reading, point: string): boolean {
  return reading.points?.includes(point) ?? false;
}

/**
 * Readings by what they belong to. Those without a subject go to `fallback` ("compressor"), or to
 * the only one of its kind that was named ("compressor 2").
 */
export function bySubject(
  readings: readonly Reading[],
  fallback: string,
): readonly (readonly [about: string, readings: readonly Reading[]])[] {
  const named = new Set(readings.flatMap((one) => one.subject ?? []));
  const kin = [...named].filter((one) => one.startsWith(fallback));
  const unnamed = kin.length === 1 ? (kin[0] ?? fallback) : fallback;
  const groups = new Map<string, Reading[]>();
  for (const one of readings) {
    const about = one.subject ?? unnamed;
    const group = groups.get(about);
    if (group === undefined) groups.set(about, [one]);
    else group.push(one);
  }
  return [...groups];
}

export function mean(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length;
}
