import type { Job, Judgement, ReplyInput, Suspect } from "../../model.ts";
import { namedCauses } from "../causes.ts";
import { limitWords } from "../product.ts";
import { reasonWords } from "../reason.ts";
import { stands } from "../standing-reading.ts";
import { worstFirst } from "../touched.ts";
import {
  causeWords,
  faultWords,
  likelihood,
  listed,
  sentence,
  sentenceCase,
  unitName,
  verdictWords,
} from "../wording.ts";
import type { Answer } from "./answer.ts";
import { whichJob } from "./which-job.ts";

const mostLines = 8;

/** The causes with what speaks for and against each, then the limits and where they come from. */
export const why: Answer = (input, question) => {
  const { job, judgement } = input;
  if (job === undefined) return whichJob(input);
  const limit = /\bthe (?:limit|max|maximum|cutoff)\b/i.test(question.about ?? question.said)
    ? boxLimit(input, job)
    : "";
  if (limit !== "") return limit;
  const asked = ofFigure(input, question.about ?? question.said);
  if (asked !== "") return `${unitName(job)}: ${asked}`;
  const suspects = namedCauses(judgement).slice(0, 2);
  const out = judgement.diagnosis.filter(
    (s) => likelihood(s) === "ruled out" && s.against.length > 0,
  );
  const causes = suspects.flatMap((suspect) => causeLines(suspect, judgement));
  const first = causes[0] ?? "Nothing measured yet speaks for a cause.";
  const ruled = listed(out.slice(0, 3).map((s) => faultWords(s.fault)));
  const tail = ruled === "" ? [] : [sentence(`Ruled out: ${ruled}`)];
  const head = [`${unitName(job)}: ${first}`, ...causes.slice(1)];
  const room = mostLines - head.length - tail.length;
  return [...head, ...limitLines(input).slice(0, room), ...tail].join("\n");
};

/** "Is 38.8 ok?": what was judged of that figure; "" where nothing was. */
function ofFigure({ judgement }: ReplyInput, said: string): string {
  const [, figure] = /^(?:so |and )?(?:is|are|was) (?:a |an )?(\d+(?:\.\d+)?)\b/i.exec(said) ?? [];
  const own = judgement.findings.find(
    ({ says, level }) => level !== "unknown" && says.split(/[^\d.]+/).includes(figure ?? "-"),
  );
  if (own === undefined) return "";
  const source = (own.source ?? own.basis).split(";")[0] ?? "";
  const from = source === "" ? "" : ` (${source})`;
  return sentence(`${verdictWords[own.level]}: ${own.says.replace(/\.$/, "")}${from}`);
}

function causeLines(suspect: Suspect, judgement: Judgement): readonly string[] {
  return [
    sentenceCase(sentence(causeWords(suspect))),
    reasons("For it", suspect.for, judgement),
    reasons("Against it", suspect.against, judgement),
  ].filter((line) => line !== "");
}

function reasons(word: string, items: readonly string[], judgement: Judgement): string {
  const short = items.slice(0, 3).map((item) => reasonWords(item, judgement));
  return short.length === 0 ? "" : sentence(`${word}: ${short.join("; ")}`);
}

/** Each limit with its full source: this is where it is asked for. Of several by one source the first names it. */
function limitLines(input: ReplyInput): readonly string[] {
  const named = new Set<string>();
  return worstFirst(input.judgement.findings)
    .filter((f) => f.level !== "unknown")
    .map((f) => {
      const source = (f.source ?? f.basis).split(";")[0] ?? "";
      const again = named.has(source);
      named.add(source);
      const from = source === "" ? "" : again ? ", by the same source" : ` (${source})`;
      const says = f.says.replace(/\.$/, "");
      return sentence(`${verdictWords[f.level]}: ${says}${from}`);
    });
}

/** "What's the limit", where a box or its product was read last: how warm it may be. */
function boxLimit({ box_limits: limits }: ReplyInput, job: Job): string {
  const last = job.readings.findLast(stands);
  if (last?.quantity !== "temperature" || !/^(?:box|product)$/.test(last.at ?? "")) return "";
  const own = limits[job.job]?.most;
  const source = own === undefined ? "Food Code 3-501.16" : "your own limit";
  return sentence(
    `${unitName(job)}: ${last.at} at most ${limitWords(own, last.figure.unit)} (${source})`,
  );
}
