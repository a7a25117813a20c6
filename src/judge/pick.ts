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
  const numbers: number[] = [];
  for (const one of readings) {
    const number = numberOf(one);
    if (number !== undefined) numbers.push(number);
  }
  return numbers;
}

/** A; what a flame carries lies far below it, what a motor draws far above. Common practice, no source. */
const mostFlameA = 1e-3;

/** "flame 2.8 microamps": a flame's proof, no motor's current. */
export function isFlameCurrent(reading: Reading): boolean {
  const ampere = numberOf(reading) ?? 0;
  return reading.quantity === "current" && ampere > 0 && ampere < mostFlameA;
}

export function ofQuantity(readings: readonly Reading[], ...names: QuantityName[]): Reading[] {
  const found: Reading[] = [];
  for (const one of readings)
    if (names.includes(one.quantity) && !isFlameCurrent(one)) found.push(one);
  return found;
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
 * the only one of its kind that was named ("compressor 2"). A whole set beside one figure of a name
 * is another's: "0.18 0.18 0.19, comp B is 1.6 gig".
 */
export function bySubject(
  readings: readonly Reading[],
  fallback: string,
): readonly (readonly [about: string, readings: readonly Reading[]])[] {
  const named = new Set(readings.flatMap((one) => one.subject ?? []));
  const kin = [...named].filter((one) => one.startsWith(fallback));
  const nameless = readings.filter((one) => one.subject === undefined);
  const sister = nameless.length >= setSize && readings.length - nameless.length < setSize;
  const unnamed = kin.length === 1 && !sister ? (kin[0] ?? fallback) : fallback;
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

/** Lines, leads or pairs in one set. */
const setSize = 3;

/**
 * Readings of one thing taken together, at most three: those of one note in its order, a new set
 * beginning where a point comes again; halves from several notes join where their points differ.
 */
export function setsOf(
  notes: readonly { readonly readings: readonly Reading[] }[],
  readings: readonly Reading[],
): readonly (readonly Reading[])[] {
  const wanted = new Set(readings);
  const sets = withCorrections(
    notes.flatMap((note) => chunks(note.readings.filter((one) => wanted.has(one)))),
  );
  const whole = sets.filter((one) => one.length >= setSize || one.some(isUnplaced));
  const halves = sets.filter((one) => !whole.includes(one));
  return [...whole, ...joined(halves)];
}

/** "no, 11.3": a corrected figure said alone, back in the row that its first left with a gap. */
function withCorrections(sets: readonly Reading[][]): Reading[][] {
  const found: Reading[][] = [];
  for (const set of sets) {
    const [only, ...more] = set;
    const gap = found.findLast((one) => one.length === setSize - 1);
    const mends = only?.corrects === true && more.length === 0 && gap !== undefined;
    if (mends && !gap.some((one) => isSame(one, only))) gap.push(only);
    else found.push([...set]);
  }
  return found;
}

function chunks(readings: readonly Reading[]): Reading[][] {
  const sets: Reading[][] = [];
  readings.forEach((one, at) => {
    const last = sets[sets.length - 1];
    const full = last === undefined || last.length >= setSize;
    if (full || last.some((other) => isSame(other, one)) || beginsRow(readings, at))
      sets.push([one]);
    else last.push(one);
  });
  return sets;
}

/** Letters at most between the figures of a row, and at least between a row and what is told apart from it. */
const rowGap = { within: 6, apart: 12 } as const;

/** "444 volts idle, goes to 392 390 391 loaded": a row of its own begins here. */
function beginsRow(readings: readonly Reading[], at: number): boolean {
  const row = readings.slice(at, at + setSize);
  if (at === 0 || row.length < setSize || row.some((one) => one.points !== undefined)) return false;
  const gaps = row.map((_, i) => gapBefore(readings, at + i));
  return gaps.every((gap, i) => (i === 0 ? gap > rowGap.apart : gap <= rowGap.within));
}

function gapBefore(readings: readonly Reading[], at: number): number {
  const to = readings[at - 1]?.spans.at(-1)?.[1] ?? 0;
  return (readings[at]?.spans[0]?.[0] ?? 0) - to;
}

function joined(halves: readonly (readonly Reading[])[]): (readonly Reading[])[] {
  const all = halves.flat();
  const distinct = all.every((one, at) => all.findIndex((other) => isSame(other, one)) === at);
  return distinct && all.length > 0 && all.length <= setSize ? [all] : [...halves];
}

/** The same points, in any order. */
function isSame(a: Reading, b: Reading): boolean {
  if (a.points === undefined || b.points === undefined) return false;
  return a.points.length === b.points.length && a.points.every((one) => hasPoint(b, one));
}

function isUnplaced(one: Reading): boolean {
  return one.points === undefined;
}

/** Findings without those that say the same of the same thing. */
export function unrepeated<T extends { readonly about: string; readonly says: string }>(
  findings: readonly T[],
): T[] {
  const seen = new Set<string>();
  return findings.filter(({ about, says }) => {
    const key = `${about}|${says}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
