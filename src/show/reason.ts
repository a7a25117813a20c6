import type { Judgement } from "../model.ts";
import { lowered, shortened } from "./verdict.ts";
import { wordCount } from "./wording.ts";

/** A reason is named; its figures and limits stand with the findings. */
const mostWords = 11;

/** Why a cause is likely or not, in a few words: a finding by its own brief form. */
export function reasonWords(reason: string, judgement: Judgement): string {
  const own = /^said: (.+)$/.exec(reason)?.[1];
  if (own !== undefined) return `the word "${own}"`;
  const finding = judgement.findings.find((f) => reason.startsWith(f.says.replace(/\.$/, "")));
  return lowered(
    finding?.brief ?? clauses(reason) ?? firstWords(reason) ?? shortened(reason, mostWords),
  );
}

/** "superheat 42 F, high" out of "Superheat 42 F, line 71 F over ...: high, commonly 5 F to 25 F". */
function clauses(reason: string): string | undefined {
  const [head, tail] = reason.split(": ");
  if (head === undefined || tail === undefined) return undefined;
  const both = `${head.split(", ")[0] ?? ""}, ${tail.split(", ")[0] ?? ""}`;
  return wordCount(both) <= mostWords ? both : undefined;
}

/** "boils at 24 F, 53 F under the return air" of a finding that stands no more: its beginning says it. */
function firstWords(reason: string): string | undefined {
  const [one, ...others] = reason.replace(/ \([^()]*\)$/, "").split(", ");
  if (one === undefined || others.length === 0 || one.startsWith("done:")) return undefined;
  const two = `${one}, ${others[0]}`;
  return [two, one].find((words) => wordCount(words) <= mostWords);
}
