import type { Job, JobPart } from "../model.ts";
import { partName } from "./open-parts.ts";
import { jobName, listed, sentence, sentenceCase } from "./wording.ts";

const mostJobs = 6;

/** For each job whether it is ready, or what it waits for still. */
export function arrivedText(
  jobs: readonly {
    readonly job: Job;
    readonly part: JobPart;
    readonly waits: readonly JobPart[];
  }[],
): string {
  const lines = jobs.slice(0, mostJobs).map(({ job, part, waits }) => {
    const rest = waits.length === 0 ? "ready" : `waits for ${listed(waits.map(partName))} still`;
    return sentenceCase(sentence(`${jobName(job)}: ${partName(part)} is in, ${rest}`));
  });
  return lines.join("\n");
}

/** For each job the part that is ordered for it. */
export function orderedText(
  jobs: readonly { readonly job: Job; readonly part: JobPart }[],
): string {
  const lines = jobs
    .slice(0, mostJobs)
    .map(({ job, part }) => sentenceCase(sentence(`${jobName(job)}: ${partName(part)} ordered`)));
  return lines.join("\n");
}

/** An order that names none of several parts: which of them? */
export function whichOrdered(parts: readonly JobPart[], job: Job): string {
  const names = parts.slice(0, 4).map(partName).join(", or ");
  return `${sentenceCase(`${jobName(job)}: ${names}`)}: which one is ordered? Say it with its name, or "all ordered".`;
}

/** One name, several numbers: which of them came? */
export function whichPart(parts: readonly { readonly job: Job; readonly part: JobPart }[]): string {
  const names = parts.map(({ job, part }) => `${partName(part)} for ${jobName(job)}`);
  return `${sentenceCase(names.slice(0, 4).join(", or "))}: which one is in?`;
}
