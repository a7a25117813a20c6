import { judge } from "../judge/judge.ts";
import type { Job, Judgement } from "../model.ts";
import { caseOf, earlierJobs } from "../record/case.ts";
import type { Memory } from "./memory.ts";
import { jobsAround } from "./rest.ts";

export const noJudgement: Judgement = { findings: [], diagnosis: [], next: [], cautions: [] };

/** Judges a job as it stands, at the time of the last message. */
export function judgeJob(memory: Memory, job: Job, at: string): Judgement {
  const judgement = judge(
    caseOf(job, memory.registry, earlierJobs(job, jobsAround(memory, job)), at),
  );
  if (memory.jobs.has(job.job)) memory.judged.set(job.job, judgement);
  return judgement;
}

/** The last judgement of a job, made anew where it isn't at hand. */
export function lastJudgement(memory: Memory, job: Job): Judgement {
  const last = job.timeline.at(-1)?.at ?? job.opened;
  return memory.judged.get(job.job) ?? judgeJob(memory, job, last);
}
