import type { ReplyInput } from "../../model.ts";
import { sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { whichJob } from "./which-job.ts";

/** What the leak rules say of a unit of that charge, with where it stands; no advice and no verdict. */
export const law: Answer = (input) => {
  const { job, law: lines = [] } = input;
  if (job === undefined && lines.length === 0) return whichJob(input);
  const head = job === undefined ? "" : `${unitName(job)}: `;
  const rated = ratedLine(input);
  return [...lines.map((line, at) => sentence(`${at === 0 ? head : ""}${line}`)), rated]
    .filter((line) => line !== "")
    .join("\n");
};

/** The unit's own leak rate where it could be worked out. */
function ratedLine({ judgement }: ReplyInput): string {
  const found = judgement.findings.find(
    ({ check, level }) => check === "leak_rate" && level !== "unknown",
  );
  return found === undefined ? "" : sentence(found.says);
}
