import { judge } from "../judge/judge.ts";
import type { Job, Judgement } from "../model.ts";
import { caseOf } from "../record/case.ts";
import { foldJob } from "../record/job.ts";
import { workedAt } from "../show/worked-at.ts";
import type { Memory } from "./memory.ts";
import { entriesAt, jobsAround } from "./rest.ts";

export const noJudgement: Judgement = { findings: [], diagnosis: [], next: [], cautions: [] };

/** Judges a job as it stands, at the time of the last message. */
export function judgeJob(memory: Memory, job: Job, at: string): Judgement {
  const judgement = judged(memory, job, at);
  if (memory.jobs.has(job.job)) memory.judged.set(job.job, judgement);
  return judgement;
}

function judged(memory: Memory, job: Job, at: string): Judgement {
  return judge(caseOf(job, memory.registry, jobsAround(memory, job), at));
}

/** A job as it was judged before anything was changed on the machine; undefined where nothing was. */
export function judgedBeforeWork(
  memory: Memory,
  job: Job,
): { readonly at: string; readonly judgement: Judgement } | undefined {
  const at = workedAt(job);
  if (at === undefined) return undefined;
  const until = entriesAt(memory, job.job).filter((entry) => Date.parse(entry.at) < Date.parse(at));
  const then = foldJob(until);
  return then === undefined ? undefined : { at, judgement: judged(memory, then, at) };
}

/** The last judgement of a job, made anew where it isn't at hand. */
export function lastJudgement(memory: Memory, job: Job): Judgement {
  const last = job.timeline.at(-1)?.at ?? job.opened;
  return memory.judged.get(job.job) ?? judgeJob(memory, job, last);
}
