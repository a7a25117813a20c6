import type { JobReading } from "../model.ts";
import type { Entry } from "../record/entry.ts";
import { foldJob } from "../record/job.ts";
import { type Backing, changesOf } from "../show/exports/changes.ts";
import type { Change } from "../show/exports/sheet-source.ts";

/** What became of a job since an export that had its first `had` entries. */
export function changesSince(entries: readonly Entry[], had: number): readonly Change[] {
  const added = entries.slice(had);
  const now = foldJob(entries);
  if (added.length === 0 || now === undefined) return [];
  return changesOf(foldJob(entries.slice(0, had)), now, backing(added));
}

/** Who took something back: a reading itself does not tell. */
function backing(entries: readonly Entry[]): Backing {
  const [last] = entries.slice(-1);
  return {
    last: { who: last?.who ?? "", at: last?.at ?? "", message: last?.message ?? "" },
    takenBackBy: ({ id, message }: JobReading) => {
      const place = Number(id.split(".")[1]);
      const entry = entries.find(
        ({ facts }) =>
          (facts.kind === "undo" && facts.places.includes(place)) ||
          (facts.kind === "delete" && facts.message === message) ||
          (facts.kind === "move" && facts.message === message) ||
          (facts.kind === "answer" && facts.readings.includes(id)) ||
          (facts.kind === "note" && facts.edits === message),
      );
      return entry === undefined
        ? undefined
        : { who: entry.who, at: entry.at, message: entry.message };
    },
  };
}
