import { wordsOfCheck } from "../check-words.ts";
import { leftBehind, openGaps } from "../closing.ts";
import { openParts, partWords } from "../open-parts.ts";
import { clipped, listed, sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { status } from "./status.ts";

/** At most so many are read on a phone; the rest is asked for at "done". */
const mostGaps = 5;

/** What the file lacks before it can be closed, and what is still at the machine; else the next check. */
export const lacking: Answer = (input, question) => {
  const { job, judgement } = input;
  // who stands on no job asks what is left of the day
  if (job === undefined) return status(input, question);
  const gaps = openGaps(job).slice(0, mostGaps);
  const there = leftBehind(input, "done", job.machine);
  const parts = openParts(job).map(partWords);
  const [check] = judgement.next;
  const lines = [
    gaps.length > 0
      ? sentence(`the file lacks: ${clipped(gaps.join("; "), 40)}`)
      : "the file asks for nothing more so far.",
    parts.length === 0 ? "" : sentence(`Parts: ${listed(parts)}`),
    there.length === 0 ? "" : sentence(`Still there: ${listed(there)}`),
    gaps.length > 0 || check === undefined
      ? ""
      : sentence(`Next: ${wordsOfCheck(check.check).act}`),
  ];
  return `${unitName(job)}: ${lines.filter((line) => line !== "").join("\n")}`;
};
