import type { ClockKindName, Job, RunningClock } from "../model.ts";
import { localTime } from "./local-time.ts";
import { jobName, personName, sentenceCase, unitName } from "./wording.ts";

/** What each clock asks for: a value, never a judgement by the time alone. */
const asks: Readonly<Record<ClockKindName, string>> = {
  insulation_1min: "one minute is up. Megohm now?",
  insulation_10min: "ten minutes are up. Megohm now?",
  vacuum_hold: "vacuum isolated at {since}. Microns now?",
  nitrogen_hold: "nitrogen in since {since}. Pressure and pipe temperature now?",
  bus_wait: "power off since {since}. Measure the bus: volts?",
  fire_watch: "brazed at {since}, the fire watch ends now. Anything warm or smoking?",
  quiet_job: "nothing heard since {since}. All well? A word will do.",
  quiet_told: "nothing heard since {since}, and no answer. Call them.",
  heater: "crankcase heater on since {since}. Shell temperature now?",
};

/** The question of a clock that came due, to whoever has the job in hand. */
export function clockText(
  clock: RunningClock,
  job: Job,
  shown: { readonly time_zone: string; readonly names: Readonly<Record<string, string>> },
): string {
  const since = localTime(clock.since, shown.time_zone)?.time ?? clock.since;
  const name = clock.holder === "" ? "" : personName(clock.holder, shown.names);
  if (clock.kind === "quiet_told") {
    return `${sentenceCase(jobName(job))}, ${name}: ${asks.quiet_told.replace("{since}", since)}`;
  }
  const who = name === "" ? "" : `${name}, `;
  return `${who}${unitName(job)}: ${asks[clock.kind].replace("{since}", since)}`;
}

/** Said when a message starts the clocks of a test: when each will ask. */
export function clocksOnText(
  clocks: readonly RunningClock[],
  job: Job,
  shown: { readonly time_zone: string },
): string {
  const times = clocks.map(({ due }) => localTime(due, shown.time_zone)?.time ?? due);
  return `${unitName(job)}: clock on, I ask at ${times.join(" and ")}.`;
}
