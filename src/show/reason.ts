import type { Judgement } from "../model.ts";
import { lowered, shortened } from "./verdict.ts";

/** A reason is named; its figures and limits stand with the findings. */
const mostWords = 11;

/** Why a cause is likely or not, in a few words: a finding by its own brief form. */
export function reasonWords(reason: string, judgement: Judgement): string {
  const finding = judgement.findings.find((f) => reason.startsWith(f.says.replace(/\.$/, "")));
  return lowered(finding?.brief ?? shortened(reason, mostWords));
}
