import type { Job } from "../model.ts";
import { entriesOf, jobOfThread } from "../record/entries-table.ts";
import type { Entry } from "../record/entry.ts";
import { foldJob } from "../record/job.ts";
import { type Card, cardOf, cardsOfUnit, numbersAtRest } from "../record/rest-table.ts";
import { allJobs, type Fetched, jobsAtSite, type Memory, threadKey, whole } from "./memory.ts";

/** So many jobs at rest stay read, for the messages that follow. */
const mostFetched = 300;
/** Visits of a unit that its next one is judged beside; our choice, no source. */
const mostEarlier = 12;

function bring(memory: Memory, number: number): Fetched | undefined {
  const known = memory.fetched.get(number);
  if (known !== undefined) return known;
  if (cardOf(memory.store, number) === undefined) return undefined;
  const entries = entriesOf(memory.store, number);
  const folded = foldJob(entries);
  if (folded === undefined) return undefined;
  const made = { job: whole(memory, folded, entries), entries };
  const [oldest] = memory.fetched.keys();
  if (memory.fetched.size >= mostFetched && oldest !== undefined) memory.fetched.delete(oldest);
  memory.fetched.set(number, made);
  return made;
}

/** A job by its number, at hand or at rest. */
export function jobAt(memory: Memory, number: number): Job | undefined {
  return memory.jobs.get(number) ?? bring(memory, number)?.job;
}

/** A job's entries, at hand or at rest. */
export function entriesAt(memory: Memory, number: number): readonly Entry[] {
  return memory.entries.get(number) ?? bring(memory, number)?.entries ?? [];
}

/** The job of a thread, at hand or at rest. */
export function threadJob(memory: Memory, channel: string, thread: string): number | undefined {
  const known = memory.threads.get(threadKey(channel, thread));
  if (known !== undefined || memory.rested.length === 0) return known;
  return jobOfThread(memory.store, channel, thread);
}

/** Jobs at hand, all or some of them, and those at rest that cards name, by number. */
export function jobsWith(
  memory: Memory,
  cards: readonly Card[],
  atHand: readonly Job[] = allJobs(memory),
): readonly Job[] {
  const rested = cards.flatMap(({ job }) => bring(memory, job)?.job ?? []);
  return rested.length === 0 ? atHand : [...atHand, ...rested].sort((a, b) => a.job - b.job);
}

/** Jobs at hand at a job's site, and the last that rest of its unit. */
export function jobsAround(memory: Memory, { site, equipment }: Job): readonly Job[] {
  const here = jobsAtSite(memory, site);
  if (site === null || equipment === null || memory.rested.length === 0) return here;
  const key = `${site}\n${equipment}`;
  const cards =
    memory.cards.get(key) ?? cardsOfUnit(memory.store, { site, equipment }, mostEarlier);
  memory.cards.set(key, cards);
  return jobsWith(memory, cards, here);
}

/** Every job there is, one after the other; those at rest are read and let go. */
export function* everyJob(memory: Memory): Generator<Job> {
  const rested = numbersAtRest(memory.store);
  if (rested.length === 0) {
    yield* allJobs(memory);
    return;
  }
  const numbers = [...rested, ...memory.jobs.keys()].sort((a, b) => a - b);
  for (const number of numbers) {
    const job = jobAt(memory, number);
    if (job !== undefined) yield job;
  }
}
