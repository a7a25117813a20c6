import type { Job, ReplyInput } from "../../model.ts";
import { namedCauses } from "../causes.ts";
import { hoursAndMinutes } from "../days.ts";
import { localTime } from "../local-time.ts";
import { openParts, partWords } from "../open-parts.ts";
import { causeSentence, clipped, listed, personName, sentence, statusWords } from "../wording.ts";
import type { Answer } from "./answer.ts";

const mostLines = 12;

/** Where every job stands; asked about one job, where that one stands. */
export const status: Answer = (input, question) =>
  input.job === undefined
    ? allJobs(input)
    : [oneJob(input, input.job), lastWord(input, input.job, question.about ?? question.said)]
        .filter((line) => line !== "")
        .join("\n");

const runs =
  /\b(?:run\w*|spin\w*|cool\w*|heat(?:s|ing)|works?|working|starts?|started|trips?|tripp\w+|hums?|dead|down|up|off|on|amps?|locked)\b/i;

/** "is rtu 2 running": nobody but who stands there knows; what he said of it last, in his words. */
function lastWord(input: ReplyInput, job: Job, asked: string): string {
  if (!/^(?:is|are)\b/i.test(asked)) return "";
  const told = job.timeline.filter(
    ({ who, kind }) => kind !== "opened" && kind !== "question" && job.people.includes(who),
  );
  const last = told.findLast(({ says }) => runs.test(says)) ?? told.at(-1);
  if (last === undefined) return "Nobody has said yet how it runs.";
  const time = localTime(last.at, input.time_zone)?.time ?? "";
  return sentence(
    `Last word of it, ${personName(last.who, input.names)} ${time}: ${clipped(last.says, 16)}`,
  );
}

function allJobs(input: ReplyInput): string {
  const open = input.jobs.filter((j) => j.status !== "done");
  const today = localTime(input.message.at, input.time_zone)?.date;
  const done = input.jobs.filter(
    (j) => j.status === "done" && localTime(j.status_at, input.time_zone)?.date === today,
  );
  const lines = open.slice(0, mostLines - 2).map((job) => statusLine(input, job));
  const more = open.length - lines.length;
  return [
    ...lines,
    more > 0 ? `And ${more} more open.` : "",
    done.length === 0 ? "" : sentence(`Done: ${clipped(listed(done.map(placeName)), 30)}`),
    open.length + done.length === 0 ? "No job is open." : "",
  ]
    .filter((line) => line !== "")
    .join("\n");
}

function placeName(job: Job): string {
  return [job.site, job.equipment].filter((w) => w !== null).join(" ") || `job ${job.job}`;
}

function statusLine(input: ReplyInput, job: Job): string {
  const who = job.person ?? job.assigned;
  const person = who === undefined ? "nobody named" : personName(who, input.names);
  const time = localTime(job.status_at, input.time_zone)?.time ?? "";
  return sentence(`${job.job} ${placeName(job)}: ${statusWords[job.status]} ${time}, ${person}`);
}

function oneJob(input: ReplyInput, job: Job): string {
  const [top] = namedCauses(input.judgement);
  const cut = input.message.at;
  const open = job.visits.filter((v) => v.to === undefined);
  const there = open.map(
    (v) =>
      `${personName(v.person, input.names)} ${v.kind === "site" ? "on site" : "driving"} ${hoursAndMinutes(Date.parse(cut) - Date.parse(v.from))}`,
  );
  const needed = openParts(job);
  return [
    sentence(statusLine(input, job)),
    there.length === 0 ? "" : sentence(listed(there)),
    top === undefined ? "" : sentence(causeSentence(top)),
    needed.length === 0 ? "" : sentence(`Parts: ${listed(needed.map(partWords))}`),
    job.clocks[0] === undefined
      ? ""
      : sentence(`Clock due ${localTime(job.clocks[0].due, input.time_zone)?.time ?? ""}`),
  ]
    .filter((line) => line !== "")
    .join("\n");
}
