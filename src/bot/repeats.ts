import type { Job, RepeatFailure } from "../model.ts";
import { poissonTail } from "../physics/poisson-tail.ts";
import { cardsAt } from "../record/rest-table.ts";
import { jobsAtSite, type Memory } from "./memory.ts";
import { jobsWith } from "./rest.ts";

/** Months that a repeat is looked for in; our choice, no source. */
const months = 14;
const monthMs = 30.44 * 86_400_000;
/** Compressors that fail in a year of one unit: 3 in 100; common practice, no source. */
const failuresPerUnitYear = 0.03;
/** With fewer there is a list, no rate; our choice, no source. */
const fewest = 3;

/** A building's visits that are looked through; our choice, no source. */
const mostVisits = 500;

const withCompressor = /branch|cassette|indoor|air handler|fan coil/i;

/** How often compressors were replaced in a job's building lately, and how likely that is by chance. */
export function repeatsOf(memory: Memory, job: Job): RepeatFailure | undefined {
  if (job.site === null) return undefined;
  const now = Date.parse(job.opened);
  const cards = memory.rested.length === 0 ? [] : cardsAt(memory.store, job.site, mostVisits);
  const rested = cards.filter(({ compressor }) => compressor);
  const jobs = jobsWith(memory, rested, jobsAtSite(memory, job.site)).filter(
    (one) =>
      one.parts.length > 0 &&
      now - Date.parse(one.opened) <= months * monthMs &&
      Date.parse(one.opened) <= now &&
      one.parts.some(({ part, state }) => state === "fitted" && /\bcompressor\b/i.test(part)),
  );
  if (jobs.length < fewest - 1) return undefined;
  const units = memory.registry.equipment.filter(
    ({ site, kind }) => site === job.site && !withCompressor.test(kind ?? ""),
  ).length;
  const expected = Math.max(1, units) * failuresPerUnitYear * (months / 12);
  const chance = jobs.length < fewest ? undefined : poissonTail(jobs.length, expected);
  return {
    component: "compressor",
    jobs: jobs.map((one) => one.job),
    months,
    per_100_unit_years: failuresPerUnitYear * 100,
    ...(chance === undefined ? {} : { chance }),
  };
}
