import type { Job, RunningClock } from "../model.ts";
import type { Entry } from "./entry.ts";

/** So long nothing is heard of who is on site before he is asked; our choice, no source. */
const quietMs = 90 * 60_000;
/** Shorter where he works alone on something live; our choice, no source. */
const aloneLiveMs = 45 * 60_000;
/** So long after he was asked the dispatcher is told; our choice, no source. */
const unansweredMs = 30 * 60_000;

/** Whether somebody is on site of whom nothing may be heard. */
export const mayBeQuiet = (job: Job): boolean => job.status === "on_site";

/**
 * The check on a job whose people say nothing: he is asked once, then the dispatcher is told once;
 * any word of his ends it. `heard`: ms of the last word of each person, anywhere. This is no alarm
 * for lone workers: it stops when the bot does.
 */
export function quietClocks(
  job: Job,
  entries: readonly Entry[],
  heard: ReadonlyMap<string, number>,
): readonly RunningClock[] {
  const who = job.person;
  if (!mayBeQuiet(job) || who === null) return [];
  const last = Math.max(
    Date.parse(job.status_at),
    ...job.people.map((person) => heard.get(person) ?? 0),
  );
  const alone = job.people.length === 1 && job.machine.power === "live";
  const due = last + (alone ? aloneLiveMs : quietMs);
  const asked = new Set(
    entries.flatMap(({ facts }) => (facts.kind === "clock" ? [facts.clock] : [])),
  );
  const clock = (kind: "quiet_job" | "quiet_told", at: number): RunningClock => ({
    id: `${kind}:${job.job}:${last}`,
    kind,
    since: isoLike(job.status_at, last),
    due: isoLike(job.status_at, at),
    job: job.job,
    channel: job.channel,
    ...(job.thread === undefined ? {} : { thread: job.thread }),
    holder: who,
  });
  const first = clock("quiet_job", due);
  if (!asked.has(first.id)) return [first];
  const second = clock("quiet_told", due + unansweredMs);
  return asked.has(second.id) ? [] : [second];
}

/** A moment as ISO in the offset of another. */
function isoLike(at: string, ms: number): string {
  const offset = /(?:Z|[+-]\d{2}:?\d{2})$/.exec(at)?.[0] ?? "Z";
  const [sign, hours, minutes] = /([+-])(\d{2}):?(\d{2})/.exec(offset)?.slice(1) ?? ["+", "0", "0"];
  const shift = (Number(hours) * 60 + Number(minutes)) * (sign === "-" ? -60_000 : 60_000);
  return `${new Date(ms + shift).toISOString().slice(0, 19)}${offset}`;
}
