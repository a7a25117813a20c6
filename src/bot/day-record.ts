import type { Job, JobPart } from "../model.ts";
import { earlierJobs, equipmentOf } from "../record/case.ts";
import {
  type DayRecord,
  type DueItem,
  type ExportJob,
  touchedOnDay,
} from "../show/exports/sheet-source.ts";
import { localTime, zoneOf } from "../show/local-time.ts";
import { cylinderSaid } from "./cylinder-fill.ts";
import { dueItems } from "./due-items.ts";
import { daysOf, type ExportScope, inScope } from "./export-scope.ts";
import { inspectionsDue } from "./inspections-due.ts";
import { judgedBeforeWork, lastJudgement } from "./judge-job.ts";
import type { Memory } from "./memory.ts";
import { namesOf } from "./people.ts";
import { jobsAround } from "./rest.ts";
import { jobsOfScope } from "./scope-jobs.ts";

/** The record of one day for the office, in the company's zone. `day`: "2026-05-12". */
export function dayRecord(memory: Memory, day: string): DayRecord {
  return scopeRecord(memory, { kind: "day", day });
}

/** The record of some days, a job, a site or a unit, ready to be put into sheets. */
export function scopeRecord(memory: Memory, scope: ExportScope): DayRecord {
  const all = jobsOfScope(memory, scope);
  const { units, time_zone, rounding_min } = memory.settings;
  // a store that was never told its zone keeps to the offset of its own messages
  const zone = time_zone ?? zoneOf(all.at(-1)?.opened ?? "");
  const rounding = rounding_min === undefined ? {} : { rounding_min };
  const bare: DayRecord = {
    ...{ jobs: [], zone, names: namesOf(memory), units },
    ...rounding,
    ...daysOf(scope),
  };
  const jobs = all
    .filter((job) => inScope(scope, job) && (bare.day === undefined || touchedOnDay(bare, job)))
    .map((job) => exportJob(memory, job));
  return {
    ...bare,
    jobs,
    due: dueOf(memory, jobs, zone),
    certificates: certificatesOf(memory),
    cylinderOf: cylinderSaid,
    supplierOf: (part) => supplierOf(memory, part),
  };
}

function dueOf(memory: Memory, jobs: readonly ExportJob[], zone: string): readonly DueItem[] {
  const day = (iso: string): string => localTime(iso, zone)?.date ?? iso.slice(0, 10);
  const units = jobs.map((entry) => ({
    entry,
    others: onUnit(entry.job, jobsAround(memory, entry.job)),
  }));
  const once = units.flatMap(({ entry, others }) =>
    dueItems(
      entry,
      others.filter(({ opened }) => Date.parse(opened) > Date.parse(entry.job.opened)),
      zone,
    ),
  );
  return [...once, ...inspectionsDue(units, day)];
}

function exportJob(memory: Memory, job: Job): ExportJob {
  const earlier = earlierJobs(job, jobsAround(memory, job)).at(-1);
  const beforeWork = judgedBeforeWork(memory, job);
  return {
    job,
    equipment: equipmentOf(job, memory.registry),
    judgement: lastJudgement(memory, job),
    ...(beforeWork === undefined ? {} : { beforeWork }),
    ...(earlier === undefined
      ? {}
      : { before: { job: earlier, judgement: lastJudgement(memory, earlier) } }),
  };
}

/** The other jobs on the same unit. */
function onUnit(job: Job, all: readonly Job[]): readonly Job[] {
  return all.filter(
    (other) =>
      other.job !== job.job &&
      job.equipment !== null &&
      other.equipment === job.equipment &&
      other.site === job.site,
  );
}

function certificatesOf({ registry, roles }: Memory): Readonly<Record<string, string>> {
  const pairs = registry.people.flatMap(({ name, nickname, handles = [], certificate }) =>
    certificate === undefined
      ? []
      : [name, nickname, ...handles].flatMap((one): [string, string][] =>
          one === undefined ? [] : [[one.toLowerCase(), certificate]],
        ),
  );
  const known = new Map(pairs);
  return Object.fromEntries(
    [...roles.keys()].flatMap((person): [string, string][] => {
      const certificate = known.get(person.toLowerCase());
      return certificate === undefined ? [] : [[person, certificate]];
    }),
  );
}

const plain = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");

function supplierOf({ registry }: Memory, part: JobPart): string | undefined {
  const { number } = part;
  const found =
    number === undefined
      ? registry.parts.find(({ name }) => plain(name) === plain(part.part))
      : registry.parts.find((one) => plain(one.number) === plain(number));
  return found?.supplier;
}
