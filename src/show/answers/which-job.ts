import type { Job, ReplyInput } from "../../model.ts";
import { unitName } from "../wording.ts";

/** Asks which job a question is about, where nothing in it tells. */
export function whichJob(input: ReplyInput): string {
  const offered: readonly Job[] = input.routing?.candidates ?? input.jobs;
  const still = offered.filter((j) => j.status !== "done");
  // where one of several is meant, a done one may be
  const open = (input.routing === undefined ? still : offered).slice(0, 4);
  if (open.length === 0) return "No job is open. Name the unit or the site.";
  return `Which job: ${open.map((j) => `${j.job} ${unitName(j)}`).join(" or ")}?`;
}
