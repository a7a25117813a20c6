import type { Message, Statement, Understood } from "../model.ts";
import { nothingRead } from "./filing.ts";

const lead = String.raw`^\s*(?:(?:so|and|ok|okay|hey|also|but|well)[\s,]+)*`;
const turns = "(?:is|are|was|were|did|does|has|have|had|do)n?['’]?t?";
/** Who or what it is asked of: "did she", "was the filter", "is hp-2"; "was 410" and "is running" tell. */
const ofDesk = new RegExp(
  String.raw`${lead}${turns}\s+(?:(?:the|a|an|any|that|this|those|these|it|its|he|she|they|you|we|my|our|his|her|their|all|both|every\p{L}+|any\p{L}+|some\p{L}+|job|unit)\b|[\p{L}]{1,5}[- ]?\d{1,3}\b|[\p{L}'’-]+\s+(?:the|a|an|get|got|do|did|put|fix|find|change|replace|clean|check|finish|order|been|done|fixed|ready|in|up|back|still|charged?|recover(?:ed)?|measured?|meg(?:ged)?|braz(?:e|ed)|repair(?:ed)?|install(?:ed)?|test(?:ed)?|lock(?:ed)?|leave|swap(?:ped)?|add(?:ed)?|pull(?:ed)?|tighten(?:ed)?|reset|call(?:ed)?|take|took|use[d]?|wash(?:ed)?)\b)`,
  "iu",
);
const ofOthers = new RegExp(
  String.raw`${lead}(?:did|has|have|had|does|do)n?['’]?t?\s+(?:he|she|they|you|anyone|anybody|somebody|someone|the office)\b`,
  "iu",
);
/** "Who fixed fjordview", "which flat is port 2": nobody tells anything so. */
const wants = new RegExp(
  String.raw`${lead}(?:who (?:fixed|did|found|changed|replaced|ordered|locked|worked|has|is|was)|whose|which (?:[\p{L}]+ )?(?:is|are|was|were|did|does|has)|when (?:is|was|did|does|will)|where (?:is|are|was|did))\b`,
  "iu",
);
/** A longer message tells something as well. */
const mostWords = 16;

/** The rules' names of what was asked: of a deed of the trade, or of anything. */
export const askedOfDeed = "asked of a deed";
export const askedOf = "asked";

/**
 * "Was the filter changed at tidewell", "did she clean the strainer": the desk measures nothing and changes
 * nothing, so what it asks is no deed, with or without its mark; of who works what he asks of others.
 */
export function withAsked(
  understood: Understood,
  { text, role }: Pick<Message, "text" | "role">,
): Understood {
  const { statements } = understood;
  if (statements.some(({ kind }) => kind === "question" || kind === "open_job")) return understood;
  if (text.trim().split(/\s+/).length > mostWords || /[.!]\s+\S/.test(text)) return understood;
  const asks =
    role === "tech"
      ? ofOthers.test(text)
      : ofDesk.test(text) || ofOthers.test(text) || wants.test(text);
  if (!asks) return understood;
  // a part that is ordered in the same breath is told
  if (statements.some((one) => one.kind === "part" && one.state === "ordered")) return understood;
  const deed = statements.some(({ kind }) => /^(?:part|action|observation)$/.test(kind));
  const question: Statement = {
    kind: "question",
    question: "told",
    about: text.trim(),
    said: text.trim(),
    spans: [[0, text.length]],
    rule: deed ? askedOfDeed : askedOf,
  };
  return { ...nothingRead, statements: [question] };
}
