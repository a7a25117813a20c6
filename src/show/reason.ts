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
  return lowered(finding?.brief ?? clauses(reason) ?? shortened(reason, mostWords));
}

/** "superheat 42 F, high" out of "Superheat 42 F, line 71 F over ...: high, commonly 5 F to 25 F". */
function clauses(reason: string): string | undefined {
  const [head, tail] = reason.split(": ");
  if (head === undefined || tail === undefined) return undefined;
  const both = `${head.split(", ")[0] ?? ""}, ${tail.split(", ")[0] ?? ""}`;
  return wordCount(both) <= mostWords ? both : undefined;
}
