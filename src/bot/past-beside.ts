import type { Job, JobReading, PastValues } from "../model.ts";
import { isCurrent } from "../record/readings.ts";

/** A value that is less than this share of its sister's, or more than its inverse, is told; our choice, no source. */
const farApart = 0.5;
/** Quantities of which a sister's value says what a sound one reads. */
const likeSisters = new Set([
  "insulation_resistance",
  "winding_resistance",
  "current",
  "superheat",
]);

const measured = (one: JobReading): boolean =>
  isCurrent(one) &&
  one.rating === undefined &&
  one.earlier !== true &&
  one.doubtful !== true &&
  one.after_s === undefined &&
  typeof one.value === "number";

const samePoint = (a: JobReading, b: JobReading): boolean =>
  a.quantity === b.quantity && a.at === b.at && a.points?.join() === b.points?.join();

/** Whether a compressor was put in on a job: what was read before it is of another motor. */
const gotCompressor = (job: Job): boolean =>
  job.parts.some(({ part, state }) => state === "fitted" && /\bcomp/i.test(part));

/** The lowest insulation value of a message beside the same lead's at the last visit. */
export function beforeOf(job: Job, earlier: readonly Job[], message: string): PastValues["before"] {
  const now = job.readings
    .filter(
      (one) => one.message === message && measured(one) && one.quantity === "insulation_resistance",
    )
    .reduce<JobReading | undefined>(
      (least, one) =>
        least === undefined || Number(one.value) < Number(least.value) ? one : least,
      undefined,
    );
  if (now === undefined || gotCompressor(job)) return undefined;
  const since = earlier.slice(earlier.findLastIndex(gotCompressor) + 1);
  const was = since
    .flatMap((one) => one.readings)
    .findLast((old) => measured(old) && samePoint(old, now) && old.subject === now.subject);
  if (was === undefined) return undefined;
  const volts = [was.test_voltage, now.test_voltage];
  const comparable = volts.includes(undefined) || was.test_voltage === now.test_voltage;
  return { was, now, comparable };
}

/** "compressor 1" beside "compressor 2": the same thing read on both today, and far apart. */
export function sisterOf(job: Job, message: string): PastValues["sister"] {
  const standing = job.readings.filter((one) => measured(one) && likeSisters.has(one.quantity));
  for (const own of standing.filter((one) => one.message === message)) {
    const other = standing.findLast(
      (one) =>
        one.message !== message &&
        isSister(one.subject, own.subject) &&
        samePoint(one, own) &&
        one.state === own.state &&
        one.test_voltage === own.test_voltage,
    );
    if (other === undefined) continue;
    const ratio = Number(own.value) / Number(other.value);
    if (ratio < farApart || ratio > 1 / farApart) return { own, other };
  }
  return undefined;
}

/** Two of a kind that are told apart by a number or a letter. */
function isSister(a: string | undefined, b: string | undefined): boolean {
  if (a === undefined || b === undefined || a === b) return false;
  const kind = (name: string): string => name.replace(/\s*(?:\d+|[a-d])$/i, "").toLowerCase();
  return kind(a) === kind(b) && kind(a) !== a.toLowerCase();
}
