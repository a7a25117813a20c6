import type { Clock } from "../model.ts";
import { allJobs, type Memory } from "./memory.ts";

/** Clocks that came due by a moment, the earliest first. */
export function dueClocks(memory: Memory, now: string): readonly Clock[] {
  const instant = Date.parse(now);
  return allJobs(memory)
    .flatMap((job) => job.clocks)
    .filter((clock) => Date.parse(clock.due) <= instant)
    .sort((a, b) => Date.parse(a.due) - Date.parse(b.due) || a.job - b.job);
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
