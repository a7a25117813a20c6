import type { Job, ReplyInput } from "../model.ts";
import { answers } from "./answers/list.ts";
import { arrivalLines } from "./arrival.ts";
import { wordsOfCheck } from "./check-words.ts";
import { closingLines, leavingQuestion, statusOf, statusSentence } from "./closing.ts";
import { dangerLine } from "./danger.ts";
import { openedText } from "./opened.ts";
import { doubtQuestion, unreadSentence } from "./questions.ts";
import { newReadings, readBack } from "./read-back.ts";
import { removedText } from "./removed.ts";
import { routingQuestion } from "./routing-question.ts";
import { touchedFindings } from "./touched.ts";
import { longVerdict, newCause, shortVerdict, withdrawnSentences } from "./verdict.ts";
import { sentence, unitName, wordCount } from "./wording.ts";

/** Up to so many readings are answered in three lines and about forty words. */
const shortReadings = 3;
const shortWords = 40;
const longLines = 12;

/**
 * The answer to one message; `undefined` where silence is the answer. For an edit or a deletion
 * the text is what the earlier reply should now say.
 */
export function replyTo(input: ReplyInput): string | undefined {
  const lines = replyLines(input).filter((line) => line !== "");
  const danger = lines.length === 0 && !input.addressed ? "" : dangerLine(input);
  const all = danger === "" ? lines : [danger, ...lines];
  return all.length === 0 ? undefined : all.join("\n");
}

function replyLines(input: ReplyInput): readonly string[] {
  if (input.message.deletes !== undefined) return [removedText(input)];
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
  const text = answers[asked.question](input, asked);
  const read = newReadings(input).length > 0 ? readBack(input) : [];
  return [...read, ...text.split("\n")].slice(0, longLines);
}

/** A message can open a job and carry readings at once. */
function withReadings(input: ReplyInput, job: Job): readonly string[] {
  return input.readings.length === 0 ? [unread(input)] : workLines(input, job);
}

function workLines(input: ReplyInput, job: Job): readonly string[] {
  const status = statusOf(input);
  const measured = newReadings(input).length + input.replaced.length;
  if (newReadings(input).length === 0 && removedText(input) !== "") return filedLines(input);
  if (measured > shortReadings) return longLinesOf(input, job);
  if (measured > 0 || touchedFindings(input).length > 0) return shortLinesOf(input, job);
  if (status !== undefined) return statusLines(input, job);
  return filedLines(input);
}

function statusLines(input: ReplyInput, job: Job): readonly string[] {
  const status = statusOf(input);
  if (status === undefined) return [];
  return [
    statusSentence(input, status, job),
    unread(input),
    ...(status.status === "on_the_way" && !input.late ? arrivalLines(input, job) : []),
    ...closingLines(input, job),
    question(input, job),
  ];
}

/** Remarks that move no verdict: fifteen words at most. */
function filedLines(input: ReplyInput): readonly string[] {
  const taken = removedText(input);
  if (taken !== "") return [taken, unread(input), question(input, input.job)];
  const read = readBack(input);
  const numbers = unread(input);
  const head = read.length === 0 && numbers !== "" && input.job ? `${unitName(input.job)}: ` : "";
  return [...read, `${head}${numbers}`, question(input, input.job)];
}

function shortLinesOf(input: ReplyInput, job: Job): readonly string[] {
  const read = readBack(input).join(" ");
  const lost = unread(input);
  const asked = question(input, job);
  const closing = status(input, job);
  const fixed = wordCount([read, lost, asked, ...withdrawnSentences(input)].join(" "));
  const next = closing.length > 0 ? "" : nextSentence(input);
  const room = shortWords - fixed - wordCount(next);
  const verdict = shortVerdict(input, Math.max(6, room - 5));
  const cause = wordCount(verdict) + 4 <= room ? newCause(input) : "";
  const why = [...withdrawnSentences(input), verdict, cause].filter((w) => w !== "").join(" ");
  const last = [next, asked].filter((w) => w !== "").join(" ");
  // a value that no check speaks of is said to be kept, so that nobody waits for a verdict
  const first = [read, why === "" ? "Filed." : "", lost].filter((w) => w !== "").join(" ");
  return [first, why, ...closing, last];
}

function longLinesOf(input: ReplyInput, job: Job): readonly string[] {
  const read = readBack(input);
  const closing = status(input, job);
  const last = [closing.length > 0 ? "" : nextSentence(input), question(input, job)];
  const tail = [newCause(input), ...closing, ...last].filter((w) => w !== "");
  const room = longLines - read.length - tail.length - 2;
  const verdict = [...withdrawnSentences(input).slice(0, 1), ...longVerdict(input, room - 2)];
  return [...read, unread(input), ...verdict.slice(0, room), ...tail];
}

function status(input: ReplyInput, job: Job): readonly string[] {
  const said = statusOf(input);
  if (said === undefined) return [];
  return [statusSentence(input, said, job), ...closingLines(input, job)];
}

function nextSentence(input: ReplyInput): string {
  const next = input.judgement.next[0];
  return next === undefined ? "" : sentence(`Next: ${wordsOfCheck(next.check).act}`);
}

function unread(input: ReplyInput): string {
  return unreadSentence(input);
}

/** The one question: what the reader must know first, then doubt, then what stays behind. */
function question(input: ReplyInput, job: Job | undefined): string {
  const asked = input.understood.ask[0];
  if (asked !== undefined) return asked;
  const doubt = doubtQuestion(input);
  if (doubt !== "") return doubt;
  return job === undefined ? "" : leavingQuestion(input, job);
}
