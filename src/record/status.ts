import type { Job, JobStatement } from "../model.ts";
import { saidTime } from "./said-time.ts";

/** The job's status is the last one said, by the time it was said for, not by arrival. */
export function foldStatus(
  statements: readonly JobStatement[],
  opened: string,
): Pick<Job, "status" | "status_at" | "person"> {
  const said = statements
    .flatMap(({ statement, who, at }) =>
      statement.kind === "status"
        ? [{ status: statement.status, who, at: saidTime(statement.time, at) }]
        : [],
    )
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  let last: Pick<Job, "status" | "status_at" | "person"> = {
    status: "open",
    status_at: opened,
    person: null,
  };
  for (const { status, who, at } of said) {
    const settled =
      last.status === "done" || last.status === "waiting_for_parts" || last.status === "no_access";
    // "done, leaving": going home says nothing new about the job
    if (status === "left_site" && settled) continue;
    last = { status, status_at: at, person: who };
  }
  return last;
}
