import type { Job, ReplyInput } from "../model.ts";
import { wordsOfCheck } from "./check-words.ts";
import { closingLines, leavingQuestion, statusOf, statusSentence } from "./closing.ts";
import { doubtQuestion } from "./questions.ts";
import { lowered } from "./verdict.ts";
import { sentence, wordCount } from "./wording.ts";

/** A check that says itself in so many words is said by itself, else by its usual name. */
const nextWords = 12;

/** The status that a message says beside its readings, and what closes with it. */
export function statusLinesOf(input: ReplyInput, job: Job): readonly string[] {
  const said = statusOf(input);
  if (said === undefined) return [];
  return [statusSentence(input, said, job), ...closingLines(input, job)];
}

/** The next check, in its own words and by its usual name; the first that fits is said. */
export function nextSentences(input: ReplyInput): readonly string[] {
  const next = input.judgement.next[0];
  if (next === undefined) return [""];
  const usual = sentence(`Next: ${wordsOfCheck(next.check).act}`);
  const own = sentence(`Next: ${lowered(next.why)}`);
  return next.why !== "" && wordCount(next.why) <= nextWords ? [own, usual] : [usual];
}

/** The one question: what the reader must know first, then doubt, then what stays behind. */
export function oneQuestion(input: ReplyInput, job: Job | undefined): string {
  const asked = input.understood.ask[0];
  if (asked !== undefined) return asked;
  const doubt = doubtQuestion(input);
  if (doubt !== "") return doubt;
  return job === undefined ? "" : leavingQuestion(input, job);
}
