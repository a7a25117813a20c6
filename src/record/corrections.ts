import type { JobReading, Reading } from "../model.ts";
import { isCurrent } from "./readings.ts";

/**
 * The standing reading that a correction means: of its quantity, not at other points or places,
 * of its author before others', of the newest message that fits, and there nearest in value.
 * `denied`: the figure that it says was wrong, which tells more than all of these.
 */
export function correctedBy(
  reading: Reading,
  who: string,
  standing: readonly JobReading[],
  denied?: string,
): JobReading | undefined {
  const all = standing.filter((old) => isCurrent(old) && fits(reading, old));
  const meant = all.filter((old) => old.figure.number === denied);
  const fitting = meant.length > 0 ? meant : all;
  const own = fitting.filter((old) => old.who === who);
  const pool = own.length > 0 ? own : fitting;
  const newest = pool.reduce<JobReading | undefined>(
    (best, old) =>
      best === undefined || Date.parse(old.received) >= Date.parse(best.received) ? old : best,
    undefined,
  );
  if (newest === undefined) return undefined;
  const beside = pool.filter((old) => old.message === newest.message);
  const points = pointsKey(reading);
  // "L3 was 18.1" behind "18.2 18.4, L3 12": what has that name is meant before what has none
  const named = beside.filter((old) => points !== undefined && pointsKey(old) === points);
  const told = named.length > 0 ? named : beside;
  // "the last one was 0.71" behind 0.71, 0.71, 0.78: what reads so already was not wrong
  const other = told.filter((old) => distance(reading, old) > 1e-6);
  const group = other.length > 0 ? other : told;
  const row = told.filter((old) => old.points === undefined);
  const { nth: place } = reading;
  if (place !== undefined && row.length === told.length && place <= row.length)
    return row[place - 1];
  const nth = legOf(reading);
  if (nth !== undefined && row.length === legs && row.length === told.length) return row[nth - 1];
  return group.reduce((best, old) =>
    distance(reading, old) < distance(reading, best) ? old : best,
  );
}

/** Legs in a row that was told without their names. */
const legs = 3;

/** "L3 was 18.1": the third of "18.2 18.4 12.1". */
function legOf({ points }: Reading): number | undefined {
  const [, number] = /^(?:L|T|lead |phase )([123])$/.exec(points?.[0] ?? "") ?? [];
  return number === undefined ? undefined : Number(number);
}

/** "11.3, not 12.3", "12.3 should be 11.3": the figure that was wrong; undefined where none is named. */
export function deniedIn(text: string, reading: Reading): string | undefined {
  const named = [...text.matchAll(denials)].map(([, number = ""]) => number);
  const others = named.filter((number) => number !== reading.figure.number);
  return others.length === 1 ? others[0] : undefined;
}

const denials =
  /(?:\b(?:not|instead of|rather than|i said|i wrote|i typed)\s+|(?=\d[\d.]*\s+(?:should be|should have been|was wrong|is wrong)))(\d+(?:\.\d+)?)/gi;

/** What a correction of the name alone was filed under. */
function namedSo(reading: Reading, old: JobReading): boolean {
  const { instead } = reading;
  return (
    instead !== undefined &&
    old.quantity === (instead.quantity ?? reading.quantity) &&
    old.at === instead.at &&
    old.subject === instead.subject &&
    old.points?.join() === instead.points?.join() &&
    old.figure.number === reading.figure.number
  );
}

function fits(reading: Reading, old: JobReading): boolean {
  if (reading.instead !== undefined) return namedSo(reading, old);
  const agrees = (a: string | undefined, b: string | undefined): boolean =>
    a === undefined || b === undefined || a === b;
  return (
    old.quantity === reading.quantity &&
    old.earlier !== true &&
    agrees(reading.at, old.at) &&
    agrees(reading.subject, old.subject) &&
    agrees(reading.action, old.action) &&
    agrees(reading.rating, old.rating) &&
    agrees(reading.state, old.state) &&
    agrees(reading.kind, old.kind) &&
    agrees(pointsKey(reading), pointsKey(old))
  );
}

function pointsKey(reading: Reading): string | undefined {
  return reading.points === undefined || reading.points.length === 0
    ? undefined
    : [...reading.points].sort().join("|");
}

function distance(reading: Reading, old: Reading): number {
  if (typeof reading.value !== "number" || typeof old.value !== "number") return 1e9;
  const [a, b] = [Math.abs(reading.value) + 1e-12, Math.abs(old.value) + 1e-12];
  return Math.abs(Math.log(a / b));
}

/** A correction that says only the number keeps the place, points and subject of what it corrects. */
export function inherit(reading: Reading, old: JobReading): Reading {
  return {
    ...(old.at === undefined ? {} : { at: old.at }),
    ...(old.points === undefined ? {} : { points: old.points }),
    ...(old.subject === undefined ? {} : { subject: old.subject }),
    ...(old.action === undefined ? {} : { action: old.action }),
    ...(old.state === undefined ? {} : { state: old.state }),
    ...(old.kind === undefined ? {} : { kind: old.kind }),
    ...(old.test_voltage === undefined ? {} : { test_voltage: old.test_voltage }),
    ...(old.after_s === undefined ? {} : { after_s: old.after_s }),
    ...(old.rating === undefined ? {} : { rating: old.rating }),
    ...reading,
  };
}
