import { equipmentOf } from "../record/case.ts";
import type { DayRecord } from "../show/exports/sheet-source.ts";
import { zoneOf } from "../show/local-time.ts";
import { lastJudgement } from "./judge-job.ts";
import { allJobs, type Memory } from "./memory.ts";
import { namesOf } from "./people.ts";

/** The record of one day for the office, in the company's zone. `day`: "2026-05-12". */
export function dayRecord(memory: Memory, day: string): DayRecord {
  const jobs = allJobs(memory);
  return {
    jobs: jobs.map((job) => ({
      job,
      equipment: equipmentOf(job, memory.registry),
      judgement: lastJudgement(memory, job),
    })),
    day,
    // a store that was never told its zone keeps to the offset of its own messages
    zone: memory.settings.time_zone ?? zoneOf(jobs.at(-1)?.opened ?? ""),
    names: namesOf(memory),
  };
}
