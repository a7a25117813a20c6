import type { Job, JobStatement } from "../model.ts";
import { statusEvents } from "./status-events.ts";

/** The job's status is the last one said, by the time it was said for, not by arrival. */
export function foldStatus(
  statements: readonly JobStatement[],
  opened: string,
): Pick<Job, "status" | "status_at" | "person"> {
  const said = statusEvents(statements);
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
