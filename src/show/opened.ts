import type { Job, ReplyInput } from "../model.ts";
import { dayAndMonth, daysBetween } from "./days.ts";
import { localTime } from "./local-time.ts";
import { lastDone } from "./past.ts";
import { repeatLine } from "./repeat-line.ts";
import { sharedPart } from "./shared-part.ts";
import { personName, sentence } from "./wording.ts";

/** A unit seen again within so many days is told so when its job opens; common practice, no source. */
const repeatDays = 90;

/** The answer to a new job: number, place, whose it is, and what was done there before. */
export function openedText(input: ReplyInput, job: Job): string {
  const lines = [
    openedLine(job, input.names),
    openAlready(input, job),
    ...beforeLines(input, job),
    repeatLine(input.repeats),
    sharedPart(input),
  ];
  return lines.filter((line) => line !== "").join("\n");
}

/** "Job 4 Gull Wharf OU-3: open, Odo": number, place and whose it is. */
export function openedLine(
  job: Pick<Job, "job" | "site" | "equipment" | "assigned" | "second">,
  names: ReplyInput["names"],
  already = false,
): string {
  const where = [job.site, job.equipment].filter((w) => w !== null).join(" ");
  const sent = [job.assigned, job.second].filter((person) => person !== undefined);
  const who =
    sent.length === 0
      ? "nobody named yet"
      : sent.map((person) => personName(person, names)).join(" and ");
  const state = already ? "open already" : "open";
  return sentence(`Job ${job.job}${where === "" ? "" : ` ${where}`}: ${state}, ${who}`);
}

/** A second call for the same trouble should not send a second van. */
function openAlready(input: ReplyInput, job: Job): string {
  const other = input.jobs.find(
    (one) =>
      one.job !== job.job &&
      one.status !== "done" &&
      one.site !== null &&
      one.site === job.site &&
      one.equipment === job.equipment,
  );
  if (other === undefined) return "";
  const who = other.person ?? other.assigned;
  const holder = who === undefined ? "" : `, ${personName(who, input.names)}`;
  return sentence(`Job ${other.job} is open on this unit already${holder}`);
}

function beforeLines(input: ReplyInput, job: Job): readonly string[] {
  if (openAlready(input, job) !== "") return [];
  const last = input.earlier[input.earlier.length - 1];
  if (last === undefined) return [];
  const recent = input.earlier.filter((e) => daysBetween(e.opened, job.opened) <= repeatDays);
  const date = localTime(last.opened, input.time_zone)?.date ?? last.opened.slice(0, 10);
  const done = lastDone(last);
  const ago = daysBetween(last.opened, job.opened);
  const what = done === "" ? "" : `: ${done}`;
  const before = `Last here ${dayAndMonth(date)}, ${ago} days ago, job ${last.job}${what}`;
  const visits = recent.length + 1;
  const count = recent.length === 0 ? "" : ` Visit ${visits} in ${repeatDays} days.`;
  return [`${sentence(before)}${count}`];
}
