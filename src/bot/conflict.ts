import type { Job, JobReading, Message, Reading, Understood } from "../model.ts";
import { isCurrent } from "../record/readings.ts";
import { whichQuestion } from "../show/which-stands.ts";
import type { Memory } from "./memory.ts";
import { namesOf } from "./people.ts";
import { jobAt } from "./rest.ts";
import { tellsWork, workedBetween } from "./worked-between.ts";

/** Values so close in time are of one state of the machine; our choice, no source. */
const togetherMs = 5 * 60_000;
/** What two meters and two hands may differ by; common practice, no source. */
const tolerance = 0.15;

const comparable = (one: Reading): boolean =>
  typeof one.value === "number" &&
  one.rating === undefined &&
  one.earlier !== true &&
  one.series === undefined &&
  one.quantity !== "mass" &&
  one.quantity !== "duration";

/** Whether two readings are of the same point, as far as it was said. */
function samePoint(a: Reading, b: Reading): boolean {
  const key = ({ quantity, at, points, subject, state, stat, after_s, kind }: Reading): string =>
    JSON.stringify([quantity, at, points, subject, state, stat, after_s, kind]);
  const told = a.at !== undefined || a.points !== undefined || a.subject !== undefined;
  return told && key(a) === key(b);
}

function differ(a: Reading, b: Reading): boolean {
  if (typeof a.value !== "number" || typeof b.value !== "number") return false;
  return Math.abs(a.value - b.value) > tolerance * Math.max(Math.abs(a.value), Math.abs(b.value));
}

function areTogether(a: JobReading, b: JobReading): boolean {
  return Math.abs(Date.parse(b.received) - Date.parse(a.received)) <= togetherMs;
}

/** Two people's values on one point, within minutes, that can't both be right. */
export interface Conflict {
  readonly earlier: JobReading;
  readonly later: JobReading;
}

export function conflictsOf(job: Job): readonly Conflict[] {
  const readings = job.readings.filter(isCurrent);
  return readings.flatMap((later, index) =>
    readings.slice(0, index).flatMap((earlier): readonly Conflict[] => {
      // first who said it: mostly one person did
      return earlier.who !== later.who &&
        areTogether(earlier, later) &&
        comparable(earlier) &&
        comparable(later) &&
        samePoint(earlier, later) &&
        differ(earlier, later) &&
        !workedBetween(job, earlier.taken, later.taken)
        ? [{ earlier, later }]
        : [];
    }),
  );
}

/** `understood` with the question whose value stands, where a colleague just read the same point otherwise. */
export function askedOfConflict(
  memory: Memory,
  message: Message,
  note: { readonly understood: Understood; readonly job: number },
): Understood {
  const { understood } = note;
  const job = jobAt(memory, note.job);
  // "reset it, 208 now": what was done changes what is read
  if (job === undefined || understood.ask.length > 0 || tellsWork(understood.statements))
    return understood;
  const now = Date.parse(message.at);
  const near = job.readings.filter(
    (one) =>
      isCurrent(one) &&
      one.who !== message.person &&
      comparable(one) &&
      Math.abs(now - Date.parse(one.received)) <= togetherMs &&
      !workedBetween(job, one.taken, message.at),
  );
  for (const reading of understood.readings) {
    if (reading.corrects === true || !comparable(reading)) continue;
    const other = near.find((one) => samePoint(one, reading) && differ(one, reading));
    if (other === undefined) continue;
    return { ...understood, ask: [whichQuestion(other, reading, namesOf(memory))] };
  }
  return understood;
}
