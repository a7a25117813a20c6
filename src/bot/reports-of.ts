import type { Job } from "../model.ts";
import { ambientPaFromAltitude } from "../physics/ambient-pressure.ts";
import { standardAtmospherePa } from "../physics/constants.ts";
import { earlierJobs, equipmentOf, siteOf } from "../record/case.ts";
import { limitsFor } from "../record/limits-for.ts";
import { fileKey, getWords } from "../record/words-table.ts";
import { type About, cellTime, type DayRecord } from "../show/exports/sheet-source.ts";
import type { Plot } from "../show/plots/plot.ts";
import type { Photo, Report } from "../show/report/report.ts";
import { reportOf } from "../show/report/report-of.ts";
import { personName } from "../show/wording.ts";
import type { Bot } from "./desk.ts";
import type { Memory } from "./memory.ts";
import { plotsOf } from "./plots-of.ts";
import { jobsAround } from "./rest.ts";

/** Photos beyond these make a report a picture book; they stay with the job. */
const mostPhotos = 6;
/** bytes of a photo that a report still takes in */
const largestPhoto = 8_000_000;

/** The plots of a job: also what "plot the vacuum" answers with. */
export function jobPlots(memory: Memory, job: Job): readonly Plot[] {
  const { altitude_m } = siteOf(job, memory.registry);
  const equipment = equipmentOf(job, memory.registry);
  return plotsOf({
    job,
    equipment,
    limits: limitsFor(equipment, job.site, memory.registry.limits),
    earlier: earlierJobs(job, jobsAround(memory, job)),
    units: memory.settings.units,
    ambientPa: ambientPaFromAltitude(altitude_m ?? 0) ?? standardAtmospherePa,
  });
}

/** A report for each job of a record; with `annex` every reading follows, and photos. */
export function reportsOf(
  { memory, store }: Pick<Bot, "memory" | "store">,
  record: DayRecord & { readonly about: About },
  { annex }: { readonly annex: boolean },
): readonly (() => Report)[] {
  return record.jobs.map(
    (entry) => () =>
      reportOf({
        entry,
        record,
        site: siteOf(entry.job, memory.registry),
        plots: jobPlots(memory, entry.job),
        photos: annex ? photosOf(store, entry.job, record) : [],
        annex,
      }),
  );
}

function photosOf(store: Bot["store"], job: Job, record: DayRecord): readonly Photo[] {
  return job.files
    .filter(({ type, size }) => /^image\/(png|jpe?g)$/.test(type) && size <= largestPhoto)
    .slice(0, mostPhotos)
    .flatMap(({ sha256, name, who, at }) => {
      const bytes = getWords(store, fileKey(sha256))?.bytes;
      const says = `${name}, ${personName(who, record.names)}, ${cellTime(record, at).slice(0, 16)}`;
      return bytes === undefined ? [] : [{ bytes, says }];
    });
}
