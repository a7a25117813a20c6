import type { ReplyInput } from "../model.ts";
import { sentence } from "./wording.ts";

/** The caution that is true now and that this person was not given on this job today; else "". */
export function dangerLine(input: ReplyInput): string {
  const given = new Set(input.cautioned);
  const fresh = input.judgement.cautions.find((c) => !given.has(c.id) && c.severity !== "notice");
  return fresh === undefined ? "" : sentence(fresh.says);
}

/** The id of the caution that the reply gives, for the record of what was said to whom. */
export function dangerGiven(input: ReplyInput): string | undefined {
  const given = new Set(input.cautioned);
  return input.judgement.cautions.find((c) => !given.has(c.id) && c.severity !== "notice")?.id;
}
