import type { Job, ReplyInput } from "../model.ts";
import { pastLines } from "./past-values.ts";
import { unreadSentence } from "./questions.ts";
import { readBack } from "./read-back.ts";
import { nextSentences, oneQuestion, statusLinesOf } from "./reply-parts.ts";
import { touchedFindings } from "./touched.ts";
import { newCause, shortVerdict, withdrawnSentences } from "./verdict.ts";
import { wordCount } from "./wording.ts";

/** About sixteen seconds when it is read aloud. */
const shortWords = 40;
/** Verdict word and source, beside what the finding says. */
const verdictFrame = 5;

/** Read-back, verdict and next check in three lines; a status said with them has its own. */
export function shortReply(input: ReplyInput, job: Job): readonly string[] {
  const read = readBack(input).join(" ");
  const lost = unreadSentence(input);
  const asked = oneQuestion(input, job);
  const closing = statusLinesOf(input, job);
  const withdrawn = withdrawnSentences(input).join(" ");
  const room = shortWords - wordCount([read, lost, asked, withdrawn].join(" "));
  const judged = touchedFindings(input).length > 0;
  const nexts = closing.length > 0 || !judged ? [""] : nextSentences(input);
  const { verdict, next } = fitting(input, nexts, room);
  const left = room - wordCount(verdict) - wordCount(next);
  const cause = newCause(input);
  const why = joined([withdrawn, verdict, wordCount(cause) <= left ? cause : ""]);
  // a value that no check speaks of is said to be kept, so that nobody waits for a verdict
  const first = joined([read, why === "" && read !== "" ? "Filed." : "", lost]);
  return [first, why, ...pastLines(input), ...closing, joined([next, asked])];
}

/** The longest verdict and next check that the words allow; the verdict's sense is worth more. */
function fitting(
  input: ReplyInput,
  nexts: readonly string[],
  room: number,
): { readonly verdict: string; readonly next: string } {
  const whole = shortVerdict(input, Number.POSITIVE_INFINITY);
  const next = nexts.find((one) => wordCount(whole) + wordCount(one) <= room);
  if (next !== undefined) return { verdict: whole, next };
  const short = nexts[nexts.length - 1] ?? "";
  const most = Math.max(6, room - wordCount(short) - verdictFrame);
  return { verdict: shortVerdict(input, most), next: short };
}

function joined(parts: readonly string[]): string {
  return parts.filter((part) => part !== "").join(" ");
}
