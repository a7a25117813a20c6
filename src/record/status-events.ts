import type { JobStatement } from "../model.ts";
import type { Status } from "../vocabulary.ts";
import { saidTime } from "./said-time.ts";

/** A status with the time that it was said for. */
export interface StatusEvent {
  readonly status: Status;
  readonly who: string;
  /** ISO */
  readonly at: string;
}

/** What somebody rolls off from: "done here, heading out" leaves as "heading out" of "here" does. */
const leaves: ReadonlySet<Status> = new Set(["on_site", "done", "waiting_for_parts", "no_access"]);

/**
 * The statuses of a job in order of the time they were said for. Who is there and says that he
 * rolls, without saying where to, leaves.
 */
export function statusEvents(statements: readonly JobStatement[]): readonly StatusEvent[] {
  const said = statements
    .flatMap(({ statement, who, at }) =>
      statement.kind === "status"
        ? [
            {
              status: statement.status,
              where: statement.where,
              who,
              at: saidTime(statement.time, at),
            },
          ]
        : [],
    )
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  const last = new Map<string, Status>();
  return said.map(({ status, where, who, at }) => {
    const rollsOff =
      status === "on_the_way" && where === undefined && leaves.has(last.get(who) ?? "on_the_way");
    const meant = rollsOff ? "left_site" : status;
    last.set(who, meant);
    return { status: meant, who, at };
  });
}
