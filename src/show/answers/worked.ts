import type { Job, ReplyInput } from "../../model.ts";
import { dayAndMonth } from "../days.ts";
import { figures } from "../figures.ts";
import { localTime } from "../local-time.ts";
import { partName } from "../open-parts.ts";
import { stands } from "../standing-reading.ts";
import { clipped, personName, sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { said } from "./summary.ts";
import { whichJob } from "./which-job.ts";

const mostReadings = 10;

/** What one person did and read on the job that is meant; where he did nothing there, on the one before. */
export const worked: Answer = (input, question) => {
  const { job } = input;
  const [, name = ""] =
    /\b(?:did|has|have|had) ([\p{L}'-]+)/iu.exec(question.about ?? question.said) ?? [];
  // of somebody who is named and of no job: where he was last
  const jobs = job === undefined ? input.jobs.toReversed() : [job, ...input.earlier.toReversed()];
  const found = jobs
    .map((one) => ({ one, who: personIn(input, one, name) }))
    .find(({ one, who }) => who !== undefined && linesOf(input, one, who).length > 0);
  if (found?.who === undefined)
    return job === undefined
      ? whichJob(input)
      : `${unitName(job)}: nothing that ${name} did is on file here.`;
  const { one, who } = found;
  const date = localTime(one.opened, input.time_zone)?.date;
  const today = localTime(input.message.at, input.time_zone)?.date;
  const when = date === undefined || date === today ? "" : `, ${dayAndMonth(date)}`;
  return [
    `${unitName(one)}, ${personName(who, input.names)}${when}:`,
    ...linesOf(input, one, who),
  ].join("\n");
};

function personIn({ names }: ReplyInput, job: Job, name: string): string | undefined {
  const wanted = name.toLowerCase();
  return job.people.find(
    (person) =>
      person.toLowerCase() === wanted || personName(person, names).toLowerCase() === wanted,
  );
}

function linesOf(input: ReplyInput, job: Job, who: string): readonly string[] {
  const fitted = job.parts
    .filter((part) => part.state === "fitted" && part.who === who)
    .map((part) => `${partName(part)} fitted`);
  const acts = said(job, "action", who);
  const seen = said(job, "observation", who);
  const read = job.readings.filter((reading) => stands(reading) && reading.who === who);
  const last = job.person === who ? localTime(job.status_at, input.time_zone)?.time : undefined;
  return [
    fitted.length + acts.length === 0
      ? ""
      : sentence(`Done: ${clipped([...fitted, ...acts].join("; "), 30)}`),
    seen.length === 0 ? "" : sentence(`Seen: ${clipped(seen.join("; "), 18)}`),
    read.length === 0 ? "" : sentence(`Read: ${figures(read.slice(-mostReadings))}`),
    last === undefined || job.status !== "done" ? "" : `Finished ${last}.`,
  ].filter((line) => line !== "");
}
