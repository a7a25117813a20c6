import { sharedPart } from "../shared-part.ts";
import { sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { whichJob } from "./which-job.ts";

/** What the rooms that are out have in common, with what is in dispute; else what is missing to tell. */
export const shared: Answer = (input) => {
  const { job, judgement } = input;
  if (job === undefined) return whichJob(input);
  const doubts = judgement.findings
    .filter(({ check, level }) => check === "places" && level === "unknown")
    .map(({ says }) => sentence(says));
  const part = sharedPart(input);
  const lines = [part, ...doubts.slice(0, 3)].filter((line) => line !== "");
  const [first = "I know no part that feeds these rooms. Which box serves them?", ...rest] = lines;
  return [`${unitName(job)}: ${first}`, ...rest].join("\n");
};
