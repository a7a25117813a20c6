import type { Job } from "../model.ts";
import { cardsAt, cardsBetween, cardsOn } from "../record/rest-table.ts";
import { daysOf, type ExportScope, type Scoped } from "./export-scope.ts";
import { allJobs, type Memory } from "./memory.ts";
import { jobAt, jobsWith } from "./rest.ts";

/** A day somewhere on earth lies within so much of the same day in UTC; times that were said may lie before it. */
const marginMs = 2 * 86_400_000;

/** Jobs at hand, and of those at rest all that may belong to a scope. */
export function jobsOfScope(memory: Memory, scope: ExportScope): readonly Job[] {
  const { store } = memory;
  const { day, to = day } = daysOf(scope);
  if (day !== undefined && to !== undefined) {
    const from = Date.parse(day) - marginMs;
    return jobsWith(memory, cardsBetween(store, from, Date.parse(to) + marginMs));
  }
  if (scope.kind === "site") return jobsWith(memory, cardsAt(store, scope.site, -1));
  if (scope.kind === "unit") return jobsWith(memory, cardsOn(store, scope.unit, -1));
  const job = scope.kind === "job" ? jobAt(memory, scope.job) : undefined;
  return job === undefined || memory.jobs.has(job.job)
    ? allJobs(memory)
    : [...allJobs(memory), job].sort((a, b) => a.job - b.job);
}

/** What may be exported, as far as names and numbers tell. */
export function knownToScope(memory: Memory, scope: ExportScope): readonly Scoped[] {
  if (scope.kind !== "job") {
    const rested = memory.rested.map((unit) => ({ job: 0, ...unit }));
    return [...rested, ...allJobs(memory)];
  }
  const job = jobAt(memory, scope.job);
  return job === undefined ? [] : [job];
}
