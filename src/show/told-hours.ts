import type { Job } from "../model.ts";

/** Hours that somebody wrote down himself and that stand; undefined where he told none. */
export function toldHours({ statements }: Job, person: string): number | undefined {
  const told = statements.flatMap(({ statement, who, undone, deleted }) =>
    statement.kind === "labor" &&
    isOf(statement.whose ?? who, person) &&
    undone !== true &&
    deleted !== true
      ? [statement.hours]
      : [],
  );
  return told.length === 0 ? undefined : told.reduce((all, one) => all + one, 0);
}

/** People are said by their first name, in any case. */
function isOf(whose: string, person: string): boolean {
  return whose.toLowerCase() === person.toLowerCase();
}

/** ", 2.5 h by own count" */
export function byOwnCount(job: Job, person: string): string {
  const told = toldHours(job, person);
  return told === undefined ? "" : `, ${Number(told.toFixed(2))} h by own count`;
}
