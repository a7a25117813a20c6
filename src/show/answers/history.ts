import type { Job, ReplyInput } from "../../model.ts";
import { dayAndMonth, daysBetween } from "../days.ts";
import { figures } from "../figures.ts";
import { foundAtAll } from "../found-not-fixed.ts";
import { localTime } from "../local-time.ts";
import { lastDone } from "../past.ts";
import { repeatLine } from "../repeat-line.ts";
import { stands } from "../standing-reading.ts";
import { clipped, componentName, listed, personName, sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { foundHere } from "./found-here.ts";
import { whichJob } from "./which-job.ts";

const mostVisits = 4;

/** "what did they find at the hotel", and no word of another time. */
const asksToday =
  /\bwhat (?:did|have|has) (?:they|he|she|we|you)(?: all)? (?:find|found|see|seen)\b(?!.*\b(?:last|before|then|previous|yesterday|ago|in (?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\w*)\b)/i;

/** The earlier visits to this unit, newest first: the complaint, the work, the telling readings. */
export const history: Answer = (input, question) => {
  const { job, earlier } = input;
  if (job === undefined) return whichJob(input);
  if (asksToday.test(question.about ?? question.said)) {
    const now = foundHere(input, job);
    if (now !== "") return now;
  }
  const told = job.status === "done" ? thisJob(input, job) : [];
  if (earlier.length === 0)
    return [`${unitName(job)}: no earlier job on this unit.`, ...told].join("\n");
  const newest = [...earlier].reverse().slice(0, told.length > 0 ? mostVisits - 1 : mostVisits);
  const more = earlier.length - newest.length;
  return [
    `${unitName(job)}: ${earlier.length === 1 ? "one earlier job" : `${earlier.length} earlier jobs`}.`,
    ...told,
    ...newest.flatMap((past) => visitLines(input, past, job.opened)),
    more > 0 ? `And ${more} before those.` : "",
    neverMeasured(earlier),
    repeatLine(input.repeats),
  ]
    .filter((line) => line !== "")
    .join("\n");
};

/** The job itself, once it is done: who asks then means it too. */
function thisJob(input: ReplyInput, job: Job): readonly string[] {
  const [first = "", ...rest] = visitLines(input, job, job.opened);
  return [first.replace("(0 days ago)", "(this job)"), ...rest];
}

/** What the last visit's claims were never proven by: the second part may die of the same cause. */
function neverMeasured(earlier: readonly Job[]): string {
  const gaps = earlier.at(-1)?.file.gaps.slice(0, 4) ?? [];
  return gaps.length === 0 ? "" : sentence(`Never recorded last time: ${listed(gaps)}`);
}

function visitLines(input: ReplyInput, past: Job, now: string): readonly string[] {
  const date = localTime(past.opened, input.time_zone)?.date ?? past.opened.slice(0, 10);
  const who = listed(past.people.map((p) => personName(p, input.names)));
  const ago = daysBetween(past.opened, now);
  const complaint = past.complaint === undefined ? "" : `: ${clipped(past.complaint, 14)}`;
  const done = lastDone(past);
  const found = foundAtAll(past).slice(0, 2);
  return [
    sentence(
      `${dayAndMonth(date)} (${ago} days ago), job ${past.job}, ${who || "nobody"}${complaint}`,
    ),
    found.length === 0 ? "" : sentence(`Found: ${clipped(found.join("; "), 14)}`),
    done === "" ? "Nothing was fitted or repaired." : sentence(`Done: ${done}`),
    measuredLine(past),
  ].filter((line) => line !== "");
}

/** What tells most about a past visit: electrical tests and weights before line temperatures. */
const telling = new Set([
  "insulation_resistance",
  "winding_resistance",
  "mass",
  "capacitance",
  "current",
  "voltage",
]);

function measuredLine(past: Job): string {
  const standing = past.readings.filter(stands);
  const chosen = standing.filter((r) => telling.has(r.quantity));
  const shown = (chosen.length > 0 ? chosen : standing).slice(0, 12);
  if (shown.length === 0) return "Nothing was measured.";
  const subject = shown[0]?.subject;
  const alike = subject !== undefined && shown.every((r) => r.subject === subject);
  return sentence(`Measured: ${alike ? `${componentName(subject)} ` : ""}${figures(shown)}`);
}
