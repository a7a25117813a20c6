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

type Said = StatusEvent & { readonly where: string | undefined; readonly errand: true | undefined };

/** What somebody rolls off from: "done here, heading out" leaves as "heading out" of "here" does. */
const leaves: ReadonlySet<Status> = new Set(["on_site", "done", "waiting_for_parts", "no_access"]);

const away =
  /^(?:(?:the|my|our|a|an) )?(?:next|other|another)(?: (?:one|job|call|stop|site|place))?$/i;

/** No way to this site was named: "heading out", "headed to the next one". */
export function isAway(where: string | undefined): boolean {
  return where === undefined || away.test(where.trim());
}

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
              errand: statement.errand,
              who,
              at: saidTime(statement.time, at),
            },
          ]
        : [],
    )
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  const last = new Map<string, Status>();
  return said.flatMap(({ status, where, errand, who, at }: Said): readonly StatusEvent[] => {
    const before = last.get(who) ?? "on_the_way";
    // who stops for a part before he came has left no site
    if (errand === true && before !== "on_site") return [];
    const rollsOff = status === "on_the_way" && isAway(where) && leaves.has(before);
    const meant = rollsOff ? "left_site" : status;
    last.set(who, meant);
    return [{ status: meant, who, at }];
  });
}
