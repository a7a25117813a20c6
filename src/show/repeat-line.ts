import type { RepeatFailure } from "../model.ts";
import { listed } from "./wording.ts";

/** "3 compressors in this building in 14 months (jobs 1, 4 and 9). By chance about 1 time in 600, ..." */
export function repeatLine(repeats: RepeatFailure | undefined): string {
  if (repeats === undefined) return "";
  const { component, jobs, months, chance, per_100_unit_years: rate } = repeats;
  const list = `${jobs.length} ${component}s in this building in ${months} months, jobs ${listed(jobs.map(String))}.`;
  if (chance === undefined || chance <= 0) return list;
  const once = Math.round(1 / chance);
  const odds =
    once < 2 ? "which chance alone explains" : `by chance about once in ${rounded(once)}`;
  return `${list} ${odds.charAt(0).toUpperCase()}${odds.slice(1)}, at ${rate} a year per 100 units (assumed): look for a cause in the building.`;
}

/** Two digits are all that a rough rate earns. */
function rounded(value: number): number {
  const step = 10 ** Math.max(0, Math.floor(Math.log10(value)) - 1);
  return Math.round(value / step) * step;
}
