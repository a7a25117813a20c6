import type { Job, ReplyInput } from "../../model.ts";
import { served } from "../board-order.ts";
import { localTime } from "../local-time.ts";
import { lastDone } from "../past.ts";
import { personName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { whichJob } from "./which-job.ts";

/**
 * Two sentences to read to the customer: who is there since when, and what comes next. No readings,
 * no cause, nobody's fault; no figure but times and a part's date.
 */
export const customer: Answer = (input) => {
  const { job } = input;
  return job === undefined ? whichJob(input) : `${presence(input, job)} ${outlook(job)}`;
};

function presence(input: ReplyInput, job: Job): string {
  const here = job.visits.filter((v) => v.kind === "site" && v.to === undefined).at(-1);
  const time = (iso: string) => localTime(iso, input.time_zone)?.time ?? "";
  if (here !== undefined) {
    return `${personName(here.person, input.names)} has been with you since ${time(here.from)}.`;
  }
  const driving = job.visits.filter((v) => v.kind === "travel" && v.to === undefined).at(-1);
  if (driving !== undefined) return `${personName(driving.person, input.names)} is on the way.`;
  const done = lastDone(job);
  const what = done === "" ? "" : `: ${done}`;
  if (job.status === "done") return `The work was finished at ${time(job.status_at)}${what}.`;
  if (job.status === "no_access") return "We came by and could not get in.";
  const last = job.visits.filter((v) => v.kind === "site").at(-1);
  if (last?.to !== undefined) {
    return `${personName(last.person, input.names)} was with you until ${time(last.to)}.`;
  }
  const came = job.status === "left_site" || job.status === "waiting_for_parts";
  if (came && job.person !== null)
    return `${personName(job.person, input.names)} was with you until ${time(job.status_at)}.`;
  return "Your call is on our list.";
}

function outlook(job: Job): string {
  const ordered = job.parts.filter((p) => p.state === "ordered").at(-1);
  if (job.status === "done") return "Please call us if anything seems wrong.";
  if (job.status === "no_access") return "Please tell us when somebody can open for us.";
  if (ordered?.due !== undefined) return `A part is ordered and due ${ordered.due}.`;
  if (ordered !== undefined) return "A part is ordered; we call when it is here.";
  if (job.parts.some((p) => p.state === "needed" && !served(job, p)))
    return "A part is needed; we call with its date.";
  if (job.status === "on_site") return "We call when we know more.";
  return "We call before we come.";
}
