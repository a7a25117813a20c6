import { namedCauses } from "../causes.ts";
import { wordsOfCheck } from "../check-words.ts";
import { sharedPart } from "../shared-part.ts";
import { causeWords, sentence, sentenceCase, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { whichJob } from "./which-job.ts";

const mostChecks = 3;

/** The checks worth doing now, with what each would settle and how long it takes. */
export const next: Answer = (input) => {
  const { job, judgement } = input;
  if (job === undefined) return whichJob(input);
  const held = judgement.next.length === 0;
  const checks = (held ? (input.waiting ?? []) : judgement.next).slice(0, mostChecks);
  const [top] = namedCauses(judgement);
  const cause = top === undefined ? "" : ` ${causeWords(top)}.`;
  if (checks.length === 0) return `${unitName(job)}:${cause} No further check on my list.`;
  const lines = checks.map((check, index) => {
    const why = sentence(
      sentenceCase(check.why === "" ? wordsOfCheck(check.check).act : check.why),
    );
    return `${index + 1}. ${why} ${check.minutes} min.`;
  });
  const shared = sharedPart(input);
  const head = `${unitName(job)}:${cause} ${held ? "Once it is closed up and powered again" : "Check next"}:`;
  return [head, ...(shared === "" ? [] : [shared]), ...lines].join("\n");
};
