import type { JobReading, Reading } from "../model.ts";
import type { Entry } from "./entry.ts";
import { removedIn, type Standing } from "./standing.ts";

/** A reading's id: job, entry and place in it. */
export const readingId = (entry: Entry, index: number): string =>
  `${entry.job}.${entry.place}.${index}`;

/** All readings of a job in order of time, with what replaced each. */
export function foldReadings(
  standing: readonly Standing[],
  entries: readonly Entry[],
): readonly JobReading[] {
  const replaced = replacements(standing);
  const { confirmed, refused } = answered(entries);
  return standing.flatMap(({ entry, note, at, fate, by }) =>
    note.readings.map((reading, index): JobReading => {
      const id = readingId(entry, index);
      const successor =
        replaced.get(id) ?? (by === undefined ? undefined : successorIn(by, entry, index));
      const { doubtful, ...rest } = reading;
      return {
        ...rest,
        ...(doubtful === true && !confirmed.has(id) ? { doubtful } : {}),
        id,
        message: entry.message,
        taken: reading.measured_at ?? at,
        received: entry.at,
        who: entry.who,
        ...(successor === undefined ? {} : { replaced_by: successor }),
        ...(fate === "undone" || refused.has(id) ? { undone: true } : {}),
        ...(fate === "deleted" ? { deleted: true } : {}),
      };
    }),
  );
}

/** Whether a reading speaks for the machine: not taken back, not doubted. */
export function isCurrent(reading: JobReading): boolean {
  return reading.replaced_by === undefined && reading.undone !== true && reading.deleted !== true;
}

/** Old reading id -> new one, by those corrections that themselves stand. */
function replacements(standing: readonly Standing[]): ReadonlyMap<string, string> {
  const replaced = new Map<string, string>();
  for (const { entry, note, fate } of standing) {
    if (fate !== "stands") continue;
    for (const { was, by } of note.replaces) {
      const here = `${entry.job}.${entry.place}`;
      const successor = typeof by === "number" ? readingId(entry, by) : (by ?? here);
      // what stands for itself was put back
      if (successor === was) replaced.delete(was);
      else replaced.set(was, successor);
    }
  }
  return replaced;
}

function answered(entries: readonly Entry[]): {
  readonly confirmed: ReadonlySet<string>;
  readonly refused: ReadonlySet<string>;
} {
  const confirmed = new Set<string>();
  const refused = new Set<string>();
  const removed = removedIn(entries);
  const edited = new Set(
    entries.flatMap(({ facts }) => (facts.kind === "note" ? (facts.edits ?? []) : [])),
  );
  for (const { facts, message } of entries) {
    if (facts.kind !== "answer") continue;
    // a "yes" that was taken back or rewritten settles nothing any more
    if (removed.has(message) || edited.has(message)) continue;
    for (const id of facts.readings) (facts.stands ? confirmed : refused).add(id);
  }
  return { confirmed, refused };
}

/** The reading of an edited message that took this one's place: of its kind, else the edit itself. */
function successorIn(edit: Entry, old: Entry, index: number): string {
  const none = `${edit.job}.${edit.place}`;
  if (edit.facts.kind !== "note" || old.facts.kind !== "note") return none;
  const was = old.facts.readings[index];
  const isAlike = (reading: Reading): boolean =>
    reading.quantity === was?.quantity &&
    reading.at === was.at &&
    reading.rating === was.rating &&
    reading.points?.join() === was.points?.join();
  // of two alike the first is the first again
  const rank = old.facts.readings.slice(0, index).filter(isAlike).length;
  const found = edit.facts.readings.flatMap((reading, at) => (isAlike(reading) ? [at] : []))[rank];
  return found === undefined ? none : readingId(edit, found);
}
