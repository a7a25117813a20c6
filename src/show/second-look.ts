import type { Job, Judgement } from "../model.ts";
import { namedCauses } from "./causes.ts";
import { figuresByComponent } from "./figures.ts";
import { stands } from "./standing-reading.ts";
import { worstFirst } from "./touched.ts";
import { findingSentence } from "./verdict.ts";
import {
  causeWords,
  clipped,
  componentName,
  jobName,
  listed,
  personName,
  sentence,
  sentenceCase,
} from "./wording.ts";

const mostLines = 8;
const mostFigures = 4;

/** A case for who was not there: what is asked, what was measured, what it was judged, what was done. */
export function caseLines(
  job: Job,
  judgement: Judgement,
  people: {
    readonly senior: string;
    readonly from: string;
    readonly names: Readonly<Record<string, string>>;
  },
): string {
  const { senior, from, names } = people;
  const head = `${personName(senior, names)}, a second look at ${jobName(job)}, from ${personName(from, names)}`;
  const found = worstFirst(judgement.findings).filter(({ level }) => level !== "unknown");
  const causes = namedCauses(judgement).slice(0, 2).map(causeWords);
  const figures = figuresByComponent(job.readings.filter(stands), job.equipment).map(
    ({ subject, text }) => (subject === undefined ? text : `${componentName(subject)} ${text}`),
  );
  const fitted = job.parts.filter(({ state }) => state === "fitted").map(({ part }) => part);
  const lines = [
    sentence(head),
    job.complaint === undefined ? "" : sentence(`Called for: ${clipped(job.complaint, 16)}`),
    ...figures.slice(0, mostFigures).map((one) => sentence(`Measured: ${one}`)),
    ...found.slice(0, 2).map((one) => findingSentence(one, 16)),
    causes.length === 0 ? "" : sentence(sentenceCase(listed(causes))),
    fitted.length === 0 ? "" : sentence(`Fitted: ${listed(fitted)}`),
  ].filter((line) => line !== "");
  return lines.slice(0, mostLines).join("\n");
}
