import type { Job, NextCheck, ReplyInput } from "../model.ts";
import { wordsOfCheck } from "./check-words.ts";
import { closingLines, leavingQuestion, statusOf, statusSentence } from "./closing.ts";
import { doubtQuestion } from "./questions.ts";
import { newReadings } from "./read-back.ts";
import { touchedFindings } from "./touched.ts";
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

/** Three leads, pairs or legs are all that there are. */
const wholeSet = 3;

/** The next check, in its own words and by its usual name; the first that fits is said. */
export function nextSentences(input: ReplyInput): readonly string[] {
  const next = input.judgement.next[0];
  if (next === undefined || toldBefore(input, next)) return [""];
  const { act, of, places } = wordsOfCheck(next.check);
  const own = ownWords(next.why);
  // what was just told, every lead of it, is not what to do next
  const told = newReadings(input).filter(
    ({ quantity, at }) =>
      of.includes(quantity) && (places === undefined || places.some((place) => place === at)),
  ).length;
  const words = told >= wholeSet ? [own ?? ""] : [own ?? act, act];
  const said = words.map((one) => (one === "" ? "" : sentence(`Next: ${one}`)));
  return input.advised !== undefined && said.includes(input.advised) ? [""] : [...new Set(said)];
}

/** The advice that an answer ends with; undefined where it gives none. */
export function adviceIn(text: string): string | undefined {
  return /^Next: [^.]*\.?/m.exec(text)?.[0];
}

/** The same advice is not said again to a reading that raises no doubt: it would be skipped over. */
function toldBefore(input: ReplyInput, next: NextCheck): boolean {
  // before anything was judged, nothing was advised either
  const before = input.before.findings.length === 0 ? undefined : input.before.next[0];
  const same = before?.check === next.check && before.why === next.why;
  return same && touchedFindings(input).every((f) => f.level === "good");
}

/** A condition in front of what is to be done: "dead and leads off: winding ohms ...". */
const condition = /^(?:dead|with|locked|power|running|drive off|lock out)\b/i;

/** Half a sentence: "at that port". */
const dangling =
  /^(?:at|on|in|of|with|to|for|from|by|and|or|so|then|that|which|until|before|after)\b/i;

/** What a check says of itself, whole or its first clause, where that is short enough. */
function ownWords(why: string): string | undefined {
  const clauses = why.split(/[:;,] /);
  const first = clauses[0] ?? "";
  const again = /^repeat\b/i.test(first) ? [first.split(" with ")[0] ?? ""] : [];
  const plain = condition.test(why)
    ? clauses.slice(1, 2)
    : again.length > 0
      ? [why, ...again]
      : [why, first];
  const fitting = plain.find(
    (text) => wordCount(text) > 2 && wordCount(text) <= nextWords && !dangling.test(text),
  );
  return fitting === undefined || condition.test(fitting) ? undefined : lowered(fitting);
}

/** The one question: what the reader must know first, then doubt, then what stays behind. */
export function oneQuestion(input: ReplyInput, job: Job | undefined): string {
  const doubt = doubtQuestion(input);
  if (doubt !== "") return doubt;
  const asked = input.understood.ask[0];
  if (asked !== undefined) return asked;
  return job === undefined ? "" : leavingQuestion(input, job);
}
