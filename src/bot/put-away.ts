import type { Job } from "../model.ts";
import type { Entry } from "../record/entry.ts";
import { type Card, putToRest } from "../record/rest-table.ts";
import { forgetTold } from "./cautioned.ts";
import { gasOf } from "./cylinder-fill.ts";
import { letGo, type Memory } from "./memory.ts";

/** A done job of which nothing was heard for so long rests: it is read again when it is needed; our choice, no source. */
const restsAfterMs = 3 * 86_400_000;

/** Puts to rest what was done long before a moment (ms), so that what is at hand does not grow with the years. */
export function putAway(memory: Memory, instant: number): void {
  const before = instant - restsAfterMs;
  const tired = [...memory.jobs.values()].filter((job) => rests(memory, job, before));
  for (const job of tired) {
    putToRest(memory.store, cardFor(job, memory.entries.get(job.job) ?? []));
    forgetTold(memory, job.job);
  }
  if (tired.length > 0) letGo(memory, tired);
}

function rests(memory: Memory, job: Job, before: number): boolean {
  if (job.status !== "done" || Date.parse(job.status_at) > before || job.clocks.length > 0) {
    return false;
  }
  return (memory.entries.get(job.job) ?? []).every(({ at }) => Date.parse(at) <= before);
}

function cardFor(job: Job, entries: readonly Entry[]): Card {
  const instants = entries.map(({ at }) => Date.parse(at));
  const { site, equipment, opened, people, assigned } = job;
  return {
    job: job.job,
    site,
    equipment,
    opened,
    people,
    first: Math.min(...instants),
    last: Math.max(...instants),
    compressor: job.parts.some(
      ({ part, state }) => state === "fitted" && /\bcompressor\b/i.test(part),
    ),
    gas: gasOf(job),
    ...(assigned === undefined ? {} : { assigned }),
  };
}
