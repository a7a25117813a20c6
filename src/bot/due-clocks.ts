import type { Clock, Job } from "../model.ts";
import { quietClocks } from "../record/quiet-jobs.ts";
import { clockText } from "../show/clock-words.ts";
import { type Memory, zoneFor } from "./memory.ts";
import { namesOf } from "./people.ts";

/** Clocks that came due by a moment, the earliest first. */
export function dueClocks(memory: Memory, now: string): readonly Clock[] {
  const instant = Date.parse(now);
  return [...memory.watched.values()]
    .flatMap((job) => [...job.clocks, ...quietOf(memory, job)])
    .filter((clock) => Date.parse(clock.due) <= instant)
    .sort((a, b) => Date.parse(a.due) - Date.parse(b.due) || a.job - b.job);
}

/** Clocks of a test that is over when nobody asked in time. */
const short = /^(?:insulation_1min|insulation_10min|vacuum_hold|bus_wait|fire_watch)\b/;
/** So long after its time nobody asks any more; our choice, no source. */
const missedMs = 15 * 60_000;

/** Whether the bot was away when a short clock came due. */
export function wasMissed({ id, due }: Clock, now: string): boolean {
  return short.test(id) && Date.parse(now) - Date.parse(due) > missedMs;
}

/** The check on a job of which nothing is heard; the dispatcher is told where the board is. */
function quietOf(memory: Memory, job: Job): readonly Clock[] {
  const clocks = quietClocks(job, memory.entries.get(job.job) ?? [], memory.heard);
  if (clocks.length === 0) return [];
  const shown = { time_zone: zoneFor(memory, job), names: namesOf(memory) };
  const board = memory.settings.board_channel;
  return clocks.map((clock) => {
    const { thread, ...rest } = { ...clock, text: clockText(clock, job, shown) };
    const told = clock.kind === "quiet_told" && board !== undefined;
    return told
      ? { ...rest, channel: board }
      : { ...rest, ...(thread === undefined ? {} : { thread }) };
  });
}

/** The platform and author of the message that a clock was started by. */
export function startOf(
  memory: Memory,
  clock: Clock,
): { readonly platform: string; readonly who: string } {
  const entries = memory.entries.get(clock.job) ?? [];
  const id = clock.id.replace(/:overnight$/, "");
  const starter = entries.find(({ message }) => id.endsWith(`:${message}`)) ?? entries[0];
  return { platform: starter?.platform ?? "", who: starter?.who ?? "" };
}
