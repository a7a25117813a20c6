import type { Job } from "../model.ts";
import { clipped, jobName, sentence, sentenceCase } from "./wording.ts";

const mark = "left out: ";

/** The answer to "leave it": the file stays open, nobody asks again. */
export function leftOutText(job: Job, gaps: readonly string[]): string {
  const words = clipped(gaps.join("; "), 24);
  return sentenceCase(sentence(`${jobName(job)}: noted, left out: ${words}. The file stays open`));
}

/** What somebody said to leave out. */
export function leftOut(job: Job): ReadonlySet<string> {
  const notes = job.statements.flatMap(({ statement, undone, deleted }) =>
    statement.kind === "note" && undone !== true && deleted !== true ? [statement.about] : [],
  );
  const gaps = notes.flatMap((about) =>
    about.startsWith(mark) ? about.slice(mark.length).split("; ") : [],
  );
  return new Set(gaps);
}
