import type { Job, ReplyInput, Statement } from "../../model.ts";
import type { ActionName } from "../../vocabulary.ts";
import { namedCauses } from "../causes.ts";
import { wordsOfCheck } from "../check-words.ts";
import { figuresByComponent } from "../figures.ts";
import { localTime } from "../local-time.ts";
import { massUnits } from "../mass-words.ts";
import { lastOfParts, partWords } from "../open-parts.ts";
import { reasonWords } from "../reason.ts";
import { stands } from "../standing-reading.ts";
import { byOwnCount } from "../told-hours.ts";
import { worstFirst } from "../touched.ts";
import { findingSentence } from "../verdict.ts";
import {
  causeSentence,
  clipped,
  componentName,
  listed,
  personName,
  sentence,
  sentenceCase,
  statusWords,
} from "../wording.ts";
import type { Answer } from "./answer.ts";
import { whichJob } from "./which-job.ts";

const mostLines = 12;
const poundsPerKg = 2.20462;

/** The whole job on one screen: called for, found, cause, done, parts, hours, what the file lacks. */
export const summary: Answer = (input, question) => {
  const { job } = input;
  if (job === undefined) return whichJob(input);
  if (/^\W*(?:(?:so|and|ok|hey) )*how(?:'?s| is| are)\b/i.test(question.about ?? question.said))
    return brief(input, job);
  return [
    headLine(input, job),
    presentLine(input, job),
    job.complaint === undefined ? "" : sentence(`Called for: ${clipped(job.complaint, 20)}`),
    causeLine(input),
    ...findingLines(input),
    seenLine(job),
    doneLine(job),
    lastLine(job),
    partsLine(job),
    gasLine(input, job),
    hoursLine(input, job),
    gapLine(job),
  ]
    .filter((line) => line !== "")
    .slice(0, mostLines)
    .join("\n");
};

/** "How's the deli looking": who is there, the cause so far, the last figures, and what it waits for. */
function brief(input: ReplyInput, job: Job): string {
  return [
    headLine(input, job),
    presentLine(input, job),
    causeLine(input),
    lastLine(job),
    partsLine(job),
  ]
    .filter((line) => line !== "")
    .join("\n");
}

function headLine(input: ReplyInput, job: Job): string {
  const where = [job.site, job.equipment].filter((w) => w !== null).join(" ");
  const time = localTime(job.status_at, input.time_zone)?.time ?? "";
  const who = job.person === null ? "" : `, ${personName(job.person, input.names)}`;
  return sentence(`Job ${job.job} ${where}: ${statusWords[job.status]} ${time}${who}`);
}

/** Who is still there when another's word stands last: his hours run on and are counted when he leaves. */
function presentLine(input: ReplyInput, job: Job): string {
  const there = job.visits.filter(
    (v) =>
      v.kind === "site" &&
      v.to === undefined &&
      (job.status !== "on_site" || v.person !== job.person),
  );
  const words = there.map(
    (v) =>
      `${personName(v.person, input.names)} since ${localTime(v.from, input.time_zone)?.time ?? ""}`,
  );
  return words.length === 0 ? "" : sentence(`Still there: ${listed(words)}`);
}

function causeLine(input: ReplyInput): string {
  const [top] = namedCauses(input.judgement);
  if (top === undefined) return "";
  // what was found says more than what was done about it
  const reason = top.for.find((one) => !one.startsWith("done:")) ?? top.for[0];
  const because = reason === undefined ? "" : `, ${reasonWords(reason, input.judgement)}`;
  return sentence(`${causeSentence(top)}${because}`);
}

function findingLines(input: ReplyInput): readonly string[] {
  const judged = worstFirst(input.judgement.findings).filter((f) => f.level !== "unknown");
  return judged.slice(0, 3).map((f) => {
    const check = sentenceCase(wordsOfCheck(f.check).name);
    const text = findingSentence(f, 16);
    return text.toLowerCase().includes(check.toLowerCase()) ? text : `${check} ${text}`;
  });
}

/** What was seen or done, of everybody or of one person, in few words. */
export function said(job: Job, kind: "observation" | "action", by?: string): readonly string[] {
  const own = job.statements.filter(({ who }) => by === undefined || who === by);
  const words = own.flatMap(({ message, statement, undone, deleted }) =>
    statement.kind === kind && undone !== true && deleted !== true && !stateOnly(statement)
      ? [wholeRemark(job, message, statement) ?? saidWords(statement)]
      : [],
  );
  const whole = [...new Set(words)].filter((word) => word !== "");
  return whole.filter((word) => !whole.some((other) => other !== word && other.includes(word)));
}

const deeds = new Set(["cleaned", "tightened", "repaired", "brazed", "adjusted", "replaced"]);

/** What was seen in a message of its own stands in its whole words. */
function wholeRemark(job: Job, message: string, statement: Statement): string | undefined {
  const measured = job.readings.some((r) => r.message === message);
  const says = job.timeline.find((t) => t.message === message)?.says;
  // "washed it": a deed in one word is told by the words around it
  const deed =
    statement.kind === "action" && statement.what === undefined && deeds.has(statement.action);
  if ((statement.kind !== "observation" && !deed) || measured || says === undefined)
    return undefined;
  return clipped(says, 9);
}

/** A thing done is said by thing and act where both are known, else as it was said. */
function saidWords(statement: Statement): string {
  const what = statement.kind === "action" ? statement.what : undefined;
  const named = what !== undefined && !/^(?:it|them|that|this|those|these)$/i.test(what);
  if (statement.kind === "action" && named && statement.action !== "other") {
    return `${statement.what} ${statement.action.replaceAll("_", " ")}`;
  }
  // a word alone ("new", "holding") tells nobody anything
  const whole = statement.said.replace(/ (?:at|the|a|an|on|of|to|in)$/, "");
  return statement.said.includes(" ") ? whole : "";
}

/** Locks, power and leads are how the machine stands, not what was done to it. */
function stateOnly(statement: Statement): boolean {
  return (
    statement.kind === "action" && (statement.planned === true || states.has(statement.action))
  );
}
const states = new Set<ActionName>([
  "locked",
  "unlocked",
  "power_off",
  "power_on",
  "proved_dead",
  "leads_lifted",
  "leads_landed",
  "waited",
]);

function seenLine(job: Job): string {
  const seen = said(job, "observation");
  return seen.length === 0 ? "" : sentence(`Seen: ${clipped(seen.join("; "), 18)}`);
}

function doneLine(job: Job): string {
  const done = said(job, "action");
  return done.length === 0 ? "" : sentence(`Done: ${clipped(done.join("; "), 24)}`);
}

/** The last message with readings: how the machine ran when it was left. */
function lastLine(job: Job): string {
  const standing = job.readings.filter(stands);
  const message = standing[standing.length - 1]?.message;
  const last = standing.filter((r) => r.message === message);
  const parts = figuresByComponent(last, job.equipment).map(({ subject, text }) =>
    subject === undefined ? text : `${componentName(subject)} ${text}`,
  );
  return parts.length === 0 ? "" : sentence(`Last measured: ${parts.join("; ")}`);
}

function partsLine(job: Job): string {
  const parts = lastOfParts(job).map(partWords);
  return parts.length === 0 ? "" : sentence(`Parts: ${clipped(parts.join("; "), 20)}`);
}

function gasLine(input: ReplyInput, job: Job): string {
  const { recovered_kg, charged_kg } = job.refrigerant;
  if (recovered_kg === 0 && charged_kg === 0) return "";
  const said = (kg: number) =>
    massUnits(job, input.units) === "si"
      ? `${kg.toFixed(2)} kg`
      : `${(kg * poundsPerKg).toFixed(1)} lb`;
  return `Refrigerant: ${said(recovered_kg)} out, ${said(charged_kg)} in.`;
}

function hoursLine(input: ReplyInput, job: Job): string {
  if (job.people.length === 0) return "";
  const who = listed(job.people.map((p) => `${personName(p, input.names)}${byOwnCount(job, p)}`));
  return `Hours on site: ${job.labor_hours.toFixed(1)}, ${who}.`;
}

function gapLine(job: Job): string {
  const gaps = job.file.gaps.slice(0, 3);
  return gaps.length === 0 ? "" : sentence(`The file lacks: ${gaps.join("; ")}`);
}
