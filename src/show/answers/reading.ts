import type { JobReading, ReplyInput } from "../../model.ts";
import { wordsOfCheck } from "../check-words.ts";
import { dayAndMonth } from "../days.ts";
import { figures } from "../figures.ts";
import { localTime } from "../local-time.ts";
import { stands } from "../standing-reading.ts";
import { lowered, needs, shortened } from "../verdict.ts";
import { componentName, personName, sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { whichJob } from "./which-job.ts";

const mostMessages = 4;

/** The standing values of what was asked for, newest first, each with when and by whom. */
export const reading: Answer = (input, question) => {
  const { job } = input;
  if (job === undefined) return whichJob(input);
  const names = `${job.site ?? ""} ${job.equipment ?? ""}`.toLowerCase().split(/[^a-z0-9-]+/);
  const all = wordsOf(question.about ?? question.said);
  const own = new Set([...names, ...names.map((name) => name.replace("-", ""))]);
  const named = all.filter((word) => !own.has(word));
  const wanted = named.length === 0 ? all : named;
  const here = matching(job.readings, wanted);
  const found =
    here.length > 0 ? here : input.earlier.flatMap((past) => matching(past.readings, wanted));
  if (found.length === 0) return workedOut(input, unitName(job), wanted);
  const messages = [...new Set(found.map((r) => r.message))].reverse().slice(0, mostMessages);
  const newest = messages.map((message) => found.filter((r) => r.message === message));
  return newest
    .map((group, index) => line(input, group, index === 0 ? unitName(job) : ""))
    .join("\n");
};

/** What judging worked out under that name: nobody measured a superheat of two gauges and a pipe. */
function workedOut(input: ReplyInput, unit: string, wanted: readonly string[]): string {
  const named = wanted.map((word) => short[word] ?? word);
  const found = input.judgement.findings.find((finding) => {
    const { name } = wordsOfCheck(finding.check);
    return named.some((word) => word.length > 2 && ` ${name}`.includes(` ${word}`));
  });
  if (found === undefined) return `${unit}: nothing like that is on file. Which reading?`;
  return sentence(
    `${unit}: ${found.level === "unknown" ? needs(found) : lowered(shortened(found.says, 24))}`,
  );
}

/** How people say what checks are called. */
const short: Readonly<Record<string, string>> = {
  sh: "superheat",
  super: "superheat",
  sc: "subcooling",
  subcool: "subcooling",
  sub: "subcooling",
  unbalance: "imbalance",
  ratio: "compression",
};

function line(input: ReplyInput, group: readonly JobReading[], head: string): string {
  const first = group[0];
  if (first === undefined) return "";
  const moment = localTime(first.taken, input.time_zone);
  const today = localTime(input.message.at, input.time_zone)?.date;
  const date = moment === undefined || moment.date === today ? "" : `${dayAndMonth(moment.date)} `;
  const subject = first.subject === undefined ? "" : componentName(first.subject);
  const name = [head, subject].filter((w) => w !== "").join(" ");
  const who = personName(first.who, input.names);
  const text = `${figures(group)}, ${date}${moment?.time ?? ""}, ${who}`;
  return sentence(name === "" ? text : `${name}: ${text}`);
}

/** Words that name nothing measured. */
const empty = new Set(
  "what did do we you read was is the on at of a for get were my last again".split(" "),
);

function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .split(/[^a-z0-9-]+/)
    .filter((word) => word !== "" && !empty.has(word));
}

/** Readings in whose names most of the words stand; where none fits all, those that fit best. */
function matching(
  readings: readonly JobReading[],
  wanted: readonly string[],
): readonly JobReading[] {
  const scored = readings.filter(stands).map((r) => {
    const text = named(r);
    return { r, score: wanted.filter((word) => text.includes(` ${word}`)).length };
  });
  const best = Math.max(0, ...scored.map((s) => s.score));
  return best === 0 ? [] : scored.filter((s) => s.score === best).map((s) => s.r);
}

function named(r: JobReading): string {
  const words = [
    r.subject,
    ...(r.points ?? []),
    r.at,
    r.quantity,
    r.figure.unit,
    r.said,
    synonyms(r),
  ];
  return ` ${words.join(" ").toLowerCase().replaceAll("_", " ")}`;
}

function synonyms(r: JobReading): string {
  const by: Readonly<Record<string, string>> = {
    insulation_resistance: "megs megohms ground insulation",
    current: "amps current",
    voltage: "volts",
    mass: "weight charge recovered",
    capacitance: "cap capacitor",
  };
  return [by[r.quantity] ?? "", r.at === "discharge" ? "head" : "", r.action ?? ""].join(" ");
}
