import type { Job, ReplyInput } from "../model.ts";
import { figures } from "./figures.ts";
import { unreadSentence } from "./questions.ts";
import { clipped, unitName } from "./wording.ts";

/** At most so many jobs are offered; one word or number must be enough to answer. */
const mostOffered = 3;

/** Asks whose the readings are where no job fits, or more than one does; "" for talk. */
export function routingQuestion(input: ReplyInput): string {
  const readings = input.understood.readings;
  const waiting = readings.length > 0 || input.routing !== undefined;
  if (!waiting) return input.addressed ? unreadSentence(input) : "";
  const what =
    readings.length > 0 ? clipped(figures(readings), 14) : clipped(input.message.text, 8);
  return `${what.trim() === "" ? filesOf(input) : what}: ${offer(input)}`;
}

/** What came without a word. */
function filesOf({ message: { files } }: ReplyInput): string {
  const kind = files.every(({ type }) => type.startsWith("image/")) ? "photo" : "file";
  return files.length === 1 ? `Your ${kind}` : `Your ${files.length} ${kind}s`;
}

function offer({ routing, understood }: ReplyInput): string {
  const jobs = routing?.candidates ?? [];
  const names = jobs.slice(0, mostOffered).map((j) => `${j.job} ${unitName(j)}`);
  // who comes to several units of one site names one when he starts on it
  if (isComing(understood) && ofOneSite(jobs))
    return `noted, goes to what you start on, ${names.join(" or ")}.`;
  // the same question is not put a second time
  if (routing?.again === true) return keptToo(names);
  const kept = "Kept, not filed yet.";
  if (names.length === 0) return `which unit or job is this for? ${kept}`;
  // "for job 1 RTU-3?" alone leaves no way for the unit that was named
  const own = routing?.unit === undefined ? "" : ` Yes, or open it: new job ${routing.unit}.`;
  if (names.length === 1) return `for job ${names[0]}?${own} ${kept}`;
  return `which job, ${names.join(" or ")}? ${kept}`;
}

/** What waits goes with what waited before, by one answer. */
function keptToo(names: readonly string[]): string {
  if (names.length === 0) return "kept too, for the unit or job that you name.";
  if (names.length === 1) return `kept too, for job ${names[0]} on your yes.`;
  return `kept too, for job ${names.join(" or ")}, as you say.`;
}

const isComing = ({ readings, statements }: ReplyInput["understood"]): boolean =>
  readings.length === 0 &&
  statements.some((one) => one.kind === "status" && /^on_/.test(one.status)) &&
  statements.every(({ kind }) => kind === "status" || kind === "note");

const ofOneSite = (jobs: readonly Job[]): boolean =>
  jobs.length > 1 && jobs.every(({ site }) => site !== null && site === jobs[0]?.site);
