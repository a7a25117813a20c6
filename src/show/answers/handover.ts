import type { Job, ReplyInput } from "../../model.ts";
import { namedCauses } from "../causes.ts";
import { circuitWords, leadWords } from "../machine-words.ts";
import { openParts, partWords } from "../open-parts.ts";
import { toldWhen } from "../told-when.ts";
import {
  causeWords,
  clipped,
  jobName,
  listed,
  ownLock,
  personName,
  sentence,
  sentenceCase,
} from "../wording.ts";
import type { Answer } from "./answer.ts";
import { whichJob } from "./which-job.ts";

const mostLines = 8;

/** What whoever takes the job over must know, read off the machine's state alone. */
export const handover: Answer = (input) => {
  const { job } = input;
  return job === undefined ? whichJob(input) : handoverLines(input, job).join("\n");
};

/** At most eight lines, what can hurt first. */
export function handoverLines(input: ReplyInput, job: Job): readonly string[] {
  const { machine } = job;
  const others = machine.locks.filter(
    ({ who, tag }) => tag !== true && who !== input.message.person,
  );
  const owner = others[0];
  return [
    owner === undefined
      ? ""
      : `Hang your own lock before ${personName(owner.who, input.names)} takes one off, then prove it dead again.`,
    sentenceCase(sentence(`${jobName(job)}: ${stateWords(job)}`)),
    ...machine.locks.map((lock) => lockLine(input, lock)),
    ...machine.bypasses.map((b) =>
      sentence(`Bypassed: ${b.what}, since ${toldWhen(input, b.since)}`),
    ),
    causeLine(input),
    lastWord(input, job),
    ...job.clocks.slice(0, 1).map((c) => sentence(`A value is due at ${toldWhen(input, c.due)}`)),
    openPartsLine(job),
  ]
    .filter((line) => line !== "")
    .slice(0, mostLines);
}

function stateWords(job: Job): string {
  const { power, leads, circuit } = job.machine;
  const words = [
    power === "unknown" ? "power not told" : `power ${power.replaceAll("_", " ")}`,
    leadWords(leads),
    circuitWords(circuit),
  ];
  return words.filter((word) => word !== "").join(", ");
}

function lockLine(input: ReplyInput, lock: Job["machine"]["locks"][number]): string {
  const place = lock.where?.replace(/^(?:(?:at|on|in) )?(?:the )?/i, "");
  const where = place === undefined ? "" : ` at the ${place}`;
  return sentence(`${ownLock(lock, input.names)}${where}, since ${toldWhen(input, lock.since)}`);
}

function causeLine(input: ReplyInput): string {
  const named = namedCauses(input.judgement).slice(0, 2);
  const words = named.map(causeWords);
  return words.length === 0 ? "" : sentenceCase(sentence(listed(words)));
}

/** Kinds of entries that tell the next person something; a bare "on site" does not. */
const tells = new Set(["reading", "action", "observation", "part", "complaint", "note"]);

function lastWord(input: ReplyInput, job: Job): string {
  const said = job.timeline.filter((t) => t.who !== input.message.person && tells.has(t.kind));
  const last = said.findLast(({ kind }) => kind !== "note") ?? said.at(-1);
  if (last === undefined) return "";
  const who = personName(last.who, input.names);
  return sentence(`Last word, ${who} ${toldWhen(input, last.at)}: ${clipped(last.says, 14)}`);
}

function openPartsLine(job: Job): string {
  const words = openParts(job).map(partWords);
  return words.length === 0 ? "" : sentence(`Parts: ${words.slice(0, 3).join("; ")}`);
}
