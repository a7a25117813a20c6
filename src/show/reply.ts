import type { Job, ReplyInput } from "../model.ts";
import { foundHere } from "./answers/found-here.ts";
import { answers } from "./answers/list.ts";
import { arrivalLines } from "./arrival.ts";
import { chargeLine } from "./charge-line.ts";
import { closingLines, statusOf, statusSentence } from "./closing.ts";
import { codeLines } from "./code-words.ts";
import { cylinderLine } from "./cylinder-line.ts";
import { dangerLine } from "./danger.ts";
import { lockStays } from "./lock-gone.ts";
import { openedText } from "./opened.ts";
import { pastLines } from "./past-values.ts";
import { doubtedGas, unreadSentence } from "./questions.ts";
import { newReadings, readBack } from "./read-back.ts";
import { refusalText } from "./refusal.ts";
import { remarkText } from "./remark.ts";
import { removedText } from "./removed.ts";
import { nextSentences, oneQuestion, statusLinesOf } from "./reply-parts.ts";
import { routingQuestion } from "./routing-question.ts";
import { sharedPart } from "./shared-part.ts";
import { shortReply } from "./short-reply.ts";
import { touchedFindings } from "./touched.ts";
import { treeLines } from "./tree-lines.ts";
import { longVerdict, newCause, withdrawnSentences } from "./verdict.ts";
import { sentence, unitName } from "./wording.ts";

/** Up to so many readings are answered in three lines and about forty words. */
const shortReadings = 3;
const longLines = 12;
/** Jobs of one site that one answer holds. */
const mostAtOnce = 3;

/**
 * The answer to one message; `undefined` where silence is the answer. For an edit or a deletion
 * the text is what the earlier reply should now say.
 */
export function replyTo(input: ReplyInput): string | undefined {
  const said = replyLines(input).filter((line) => line !== "");
  const read = [...said.slice(0, 1), ...codeLines(input)].join(" ");
  const target = said.length === 0 ? "" : chargeLine(input);
  const fill = said.length === 0 ? "" : cylinderLine(input);
  const lines = [read, target, fill, ...said.slice(1)].filter((line) => line !== "");
  const danger = lines.length === 0 && !input.addressed ? "" : dangerLine(input);
  const all = danger === "" ? lines : [danger, ...lines];
  return all.length === 0 ? undefined : all.join("\n");
}

function replyLines(input: ReplyInput): readonly string[] {
  if (input.message.deletes !== undefined) {
    const taken = removedText(input);
    const isBack = taken === "" && input.released.length > 0;
    return isBack && input.job !== undefined ? workLines(input, input.job) : [taken];
  }
  const refused = refusalText(input);
  if (refused !== undefined) return [refused];
  const asked = input.understood.statements.find((s) => s.kind === "question");
  if (asked?.kind === "question") return answered(input, asked);
  if (input.job === undefined) return [routingQuestion(input)];
  if (input.opened) return [openedText(input, input.job), ...withReadings(input, input.job)];
  return workLines(input, input.job);
}

function answered(
  input: ReplyInput,
  asked: Extract<ReplyInput["understood"]["statements"][number], { kind: "question" }>,
): readonly string[] {
  const text = ofEach(input, asked) ?? answers[asked.question](input, asked);
  const read = newReadings(input).length > 0 ? readBack(input) : [];
  return [...read, ...text.split("\n")].slice(0, longLines);
}

const ofAll = new Set(["hours", "parts", "product", "worked", "who", "told", "rooms"]);

/** "What was wrong at the clinic", where two jobs are: in short what was found at each. */
function ofEach(
  input: ReplyInput,
  asked: Extract<ReplyInput["understood"]["statements"][number], { kind: "question" }>,
): string | undefined {
  const jobs = input.job === undefined ? (input.routing?.candidates ?? []) : [];
  if (jobs.length < 2 || jobs.length > mostAtOnce) return undefined;
  if (ofAll.has(asked.question)) return answers[asked.question]({ ...input, jobs }, asked);
  // a customer with two units hears of both
  if (asked.question === "customer")
    return jobs
      .map((job) => `${unitName(job)}: ${answers.customer({ ...input, job }, asked)}`)
      .join("\n");
  if (asked.question !== "summary" && asked.question !== "history") return undefined;
  const lines = jobs.map((job) =>
    foundHere(
      { ...input, judgement: { findings: [], diagnosis: [], next: [], cautions: [] } },
      job,
    ),
  );
  return lines.every((line) => line === "")
    ? undefined
    : lines.filter((line) => line !== "").join("\n");
}

/** A message can open a job and carry readings at once. */
function withReadings(input: ReplyInput, job: Job): readonly string[] {
  return input.readings.length === 0 ? [unreadSentence(input)] : workLines(input, job);
}

function workLines(input: ReplyInput, job: Job): readonly string[] {
  const status = statusOf(input);
  const gas = doubtedGas(input);
  if (gas !== "") return [gas, unreadSentence(input), oneQuestion(input, job)];
  const measured = newReadings(input).length + input.replaced.length;
  const stands = input.replaced.some(({ by }) => by !== undefined);
  if (newReadings(input).length === 0 && !stands && removedText(input) !== "") {
    return filedLines(input);
  }
  const told = input.understood.statements.some(({ kind }) => kind === "tree");
  if (told && measured === 0 && status === undefined) {
    return [...treeLines(input), unreadSentence(input), oneQuestion(input, job)];
  }
  if (measured > shortReadings) return longLinesOf(input, job);
  if (measured > 0 || touchedFindings(input).length > 0) return shortReply(input, job);
  if (status !== undefined) return statusLines(input, job);
  return filedLines(input);
}

function statusLines(input: ReplyInput, job: Job): readonly string[] {
  const status = statusOf(input);
  if (status === undefined) return [];
  const remarks = remarkText(input);
  const filed = remarks === "" ? "" : ` ${sentence(`Filed: ${remarks}`)}`;
  return [
    `${statusSentence(input, status, job)}${filed}`,
    unreadSentence(input),
    sharedAgain(input),
    lockStays(input),
    ...(status.status === "on_the_way" && !input.late ? arrivalLines(input, job) : []),
    ...closingLines(input, job),
    oneQuestion(input, job),
  ];
}

/** Which rooms are fine was told: the part that the others share, once more if it is the same. */
function sharedAgain(input: ReplyInput): string {
  const told = input.understood.statements.some(({ kind }) => kind === "complaint");
  return told ? sharedPart(input) : "";
}

/** Remarks that move no verdict: fifteen words at most. */
function filedLines(input: ReplyInput): readonly string[] {
  const taken = removedText(input);
  if (taken !== "") return [taken, unreadSentence(input), oneQuestion(input, input.job)];
  const read = readBack(input);
  const numbers = unreadSentence(input);
  const head = read.length === 0 && numbers !== "" && input.job ? `${unitName(input.job)}: ` : "";
  return [
    ...read,
    `${head}${numbers}`,
    sharedAgain(input),
    lockStays(input),
    ruleOutLine(input),
    oneQuestion(input, input.job),
  ];
}

/** A compressor or a drive is not ordered on a hunch: what would still rule it out. */
function ruleOutLine({ rule_outs = [] }: ReplyInput): string {
  return rule_outs.length === 0 ? "" : sentence(`Before it is ordered: ${rule_outs.join(", ")}`);
}

/** Grouped by component, at most twelve lines: what was read and what must be done come first. */
function longLinesOf(input: ReplyInput, job: Job): readonly string[] {
  const read = [...readBack(input), unreadSentence(input)].filter((line) => line !== "");
  const closing = statusLinesOf(input, job);
  const next = closing.length > 0 ? "" : (nextSentences(input)[0] ?? "");
  const tail = [newCause(input), ...pastLines(input), ...closing, next, oneQuestion(input, job)];
  const last = tail.filter((line) => line !== "");
  const room = Math.max(0, longLines - read.length - last.length);
  // one line for what could not be judged, one for the rest by name, one for all that is good
  const verdict = [...withdrawnSentences(input), ...longVerdict(input, Math.max(1, room - 3))];
  return [...read, ...verdict.slice(0, room), ...last].slice(0, longLines);
}
