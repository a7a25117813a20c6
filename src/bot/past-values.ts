import type { Job, JobReading, PastValues } from "../model.ts";
import { isCurrent } from "../record/readings.ts";

/** Outdoor air that differs by more makes two sets no comparison, K; our choice, no source. */
const outdoorWithinK = 5;
/** Winding or shell temperatures that differ by more do the same, K; our choice, no source. */
const shellWithinK = 5;
/** What two readings of one state may differ by; our choice, no source. */
const tolerance = 0.1;
/** With fewer comparable values there is no drift; our choice, no source. */
const fewest = 4;

const measured = (one: JobReading): boolean =>
  isCurrent(one) &&
  one.rating === undefined &&
  one.earlier !== true &&
  one.doubtful !== true &&
  typeof one.value === "number";

const settled = new Set(["pressure", "temperature", "superheat", "subcooling", "current"]);

const sameThing = (a: JobReading, b: JobReading): boolean =>
  a.quantity === b.quantity &&
  a.at === b.at &&
  a.subject === b.subject &&
  a.points?.join() === b.points?.join() &&
  a.test_voltage === b.test_voltage &&
  a.state !== "start" &&
  b.state !== "start" &&
  a.stat === b.stat &&
  a.action === undefined &&
  b.action === undefined;

/** The set that was read last after a part was fitted or gas charged, on a visit that ended done. */
function settledSet(job: Job): readonly JobReading[] {
  const repaired = [
    ...job.parts.filter(({ state }) => state === "fitted").map(({ at }) => at),
    ...job.readings.filter(({ action }) => action === "charged").map(({ taken }) => taken),
  ].map((at) => Date.parse(at));
  if (job.status !== "done" || repaired.length === 0) return [];
  const since = Math.max(...repaired);
  const after = job.readings.filter(
    (one) => measured(one) && settled.has(one.quantity) && Date.parse(one.taken) >= since,
  );
  // of one thing the last
  return after.filter((one, index) => !after.slice(index + 1).some((next) => sameThing(one, next)));
}

const outdoor = (readings: readonly JobReading[]): JobReading | undefined =>
  readings.findLast((one) => measured(one) && one.at === "outdoor_air");

const apart = (a: JobReading, b: JobReading): number => Math.abs(Number(a.value) - Number(b.value));

/** What the same unit read when it was last left in order, beside what a message reads now. */
export function baselineOf(
  job: Job,
  earlier: readonly Job[],
  message: string,
): PastValues["baseline"] {
  const now = job.readings.filter((one) => one.message === message && measured(one));
  const past = earlier.findLast((one) => settledSet(one).length > 1);
  if (past === undefined) return undefined;
  const set = settledSet(past);
  const pairs = now.flatMap((one) => {
    const was = set.find((old) => sameThing(old, one) && old.at !== "outdoor_air");
    return was === undefined ? [] : [{ was, now: one }];
  });
  if (pairs.length < 2) return undefined;
  const airThen = outdoor(past.readings);
  const airNow = outdoor(job.readings);
  const when = past.status_at;
  if (airThen === undefined || airNow === undefined) return { when, pairs: [], missing: true };
  if (apart(airThen, airNow) > outdoorWithinK) return { when, pairs: [], air: [airThen, airNow] };
  const moved = pairs.filter(
    ({ was, now: is }) => apart(was, is) > tolerance * Math.max(Math.abs(Number(was.value)), 1e-9),
  );
  return { when, pairs: moved };
}

/** The last values of one thing, one a visit, where each is lower than the one before under the same conditions. */
export function driftOf(job: Job, earlier: readonly Job[], message: string): PastValues["drift"] {
  const now = job.readings.findLast(
    (one) => one.message === message && measured(one) && one.quantity === "insulation_resistance",
  );
  if (now === undefined) return undefined;
  const before = earlier.flatMap((one) => {
    const last = one.readings.findLast((old) => measured(old) && sameThing(old, now));
    return last === undefined ? [] : [last];
  });
  const all = [...before, now].slice(-fewest);
  if (all.length < fewest) return undefined;
  const temperatures = all.map(({ temperature }) => temperature);
  const known = temperatures.filter((one) => one !== undefined);
  const mixed =
    (known.length > 0 && known.length < all.length) ||
    Math.max(...known, 0) - Math.min(...known, Math.max(...known, 0)) > shellWithinK;
  const falls = all.every((one, index) => {
    const next = all[index + 1];
    return next === undefined || Number(next.value) < Number(one.value);
  });
  return falls && !mixed ? all : undefined;
}
