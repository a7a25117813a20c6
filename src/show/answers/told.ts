import type { Job, ReplyInput } from "../../model.ts";
import { figures } from "../figures.ts";
import { localTime } from "../local-time.ts";
import { stands } from "../standing-reading.ts";
import { clipped, personName, sentence, statusWords, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { status } from "./status.ts";
import { weights } from "./weights.ts";

const mostLines = 2;
/** Jobs that are looked through where none is meant. */
const mostJobs = 2;

/** "Did she clean the strainer", "was the filter changed": what was told of that, in the words it was told in. */
export const told: Answer = (input, question) => {
  const { job } = input;
  const text = question.about ?? question.said;
  if (/\b(?:charged?|charging|recover(?:ed)?|gas|refrigerant)\b/i.test(text) && job !== undefined)
    return weights(input, question);
  const measured = ofQuantity(input, text);
  if (measured !== undefined) return measured;
  const jobs = job === undefined ? (input.routing?.candidates ?? input.jobs) : [job];
  const asked = wordsOf(input, question.about ?? question.said);
  const found = jobs.flatMap((one) => {
    const rows = rowsOf(input, one, asked);
    return rows.length === 0 ? [] : [{ one, rows }];
  });
  if (/^\W*(?:(?:so|and|ok|hey) )*which\b/i.test(text)) {
    const latest = found.toSorted((a, b) => lastAt(b.rows) - lastAt(a.rows)).slice(0, mostJobs);
    const lines = latest.flatMap(({ one, rows }) =>
      rows.slice(-1).map((row) => line(input, one, row)),
    );
    return lines.length > 0 ? lines.join("\n") : "None was named today, by what was told.";
  }
  if (found.length > 0 && found.length <= mostJobs)
    return found.flatMap(({ one, rows }) => rows.map((row) => line(input, one, row))).join("\n");
  const said = question.about ?? question.said;
  if (job !== undefined && /^\W*(?:(?:so|and|ok) )*(?:is|are)\b/i.test(said))
    return status(input, question);
  const deed = /deed/.test(question.rule) || input.addressed;
  if (job === undefined || !deed || input.message.role === "tech") return "";
  const stands = `${statusWords[job.status]} ${localTime(job.status_at, input.time_zone)?.time ?? ""}`;
  const words = said.toLowerCase().split(/[^\p{L}-]+/u);
  const thing = asked.flatMap((stem) => words.find((word) => word.startsWith(stem)) ?? []);
  const of = thing.length === 0 ? "that" : `"${thing.slice(0, 3).join(" ")}"`;
  return sentence(`${unitName(job)}: nothing was said of ${of}; ${stands}`);
};

type Row = Job["timeline"][number];

const lastAt = (rows: readonly Row[]): number => Date.parse(rows.at(-1)?.at ?? "");

/** What is measured, by the words that it is asked for with. */
const quantities: readonly (readonly [words: RegExp, name: string, is: RegExp])[] = [
  [/\b(?:volts?|voltages?)\b/i, "volts", /^voltage$/],
  [/\b(?:amps?|currents?)\b/i, "amps", /^current$/],
  [/\b(?:megs?|megohms?|meg out|megged|insulation)\b/i, "insulation", /^insulation_resistance$/],
  [/\b(?:windings?|ohm(?:s|ed)?)\b/i, "windings", /^winding_resistance$/],
  [/\bstatic\b/i, "static pressure", /^static_pressure$/],
  [/\b(?:microns?|vacuum)\b/i, "vacuum", /^vacuum$/],
];

/** "Did anyone check the supply volts": the figures of that kind, or that there are none. */
function ofQuantity(input: ReplyInput, text: string): string | undefined {
  const { job } = input;
  const kind = quantities.find(([words]) => words.test(text));
  if (job === undefined || kind === undefined) return undefined;
  const [, name, is] = kind;
  const found = job.readings.filter((one) => stands(one) && is.test(one.quantity));
  const last = found.at(-1);
  if (last === undefined) return sentence(`${unitName(job)}: no ${name} on file`);
  const group = found.filter(({ message }) => message === last.message);
  const time = localTime(last.taken, input.time_zone)?.time ?? "";
  return sentence(
    `${unitName(job)}: ${figures(group)}, ${time}, ${personName(last.who, input.names)}`,
  );
}

function line(input: ReplyInput, job: Job, { who, at, says }: Row): string {
  const time = localTime(at, input.time_zone)?.time ?? "";
  return sentence(
    `${unitName(job)}, ${personName(who, input.names)} ${time}: ${clipped(says, 16)}`,
  );
}

/** The latest of those that say most of what was asked. */
function rowsOf(input: ReplyInput, job: Job, asked: readonly string[]): readonly Row[] {
  const rows = job.timeline
    .filter(
      ({ kind, message }) => !/^(?:opened|question)$/.test(kind) && message !== input.message.id,
    )
    .map((row) => {
      const words = row.says.toLowerCase().split(/[^\p{L}\p{N}-]+/u);
      const score = asked.filter((stem) => words.some((word) => word.startsWith(stem))).length;
      return { row, score };
    });
  const most = Math.max(0, ...rows.map(({ score }) => score));
  if (most === 0) return [];
  const best = rows.filter(({ score }) => score === most).map(({ row }) => row);
  const own = best.filter(
    ({ message }, at) => best.findIndex((one) => one.message === message) === at,
  );
  return own.slice(-mostLines);
}

/** What people write for it in a chat. */
const short: Readonly<Record<string, string>> = {
  compressor: "comp",
  compressors: "comp",
  capacitor: "cap",
  capacitors: "cap",
};

const empty = new Set(
  (
    "so and okay hey also but well is are was were did does has have had isn aren wasn didn hasn the any that this " +
    "those these its she they you our his her their all both every anyone anybody somebody someone everyone " +
    "been get got put done still yet already there here now today for with from what when who why how job unit " +
    "going working running thing stuff good okay fine"
  ).split(" "),
);

/** The stems of what is asked of, without people, the site and the unit. */
function wordsOf(input: ReplyInput, said: string): readonly string[] {
  const places = (input.job === undefined ? input.jobs : [input.job])
    .flatMap(({ site, equipment }) => [site ?? "", equipment ?? ""])
    .join(" ")
    .toLowerCase();
  const people = input.jobs.flatMap((job) => job.people);
  const names = new Set([
    ...places.split(/[^\p{L}\p{N}]+/u),
    ...people.flatMap((one) => [one.toLowerCase(), personName(one, input.names).toLowerCase()]),
  ]);
  return said
    .toLowerCase()
    .split(/[^\p{L}\p{N}-]+/u)
    .filter((word) => word.length > 2 && !empty.has(word) && !names.has(word) && !/\d/.test(word))
    .map((word) => short[word] ?? word.replace(/(?:ing|ed|es|s|d|e)$/, ""))
    .filter((stem) => stem.length > 2);
}
