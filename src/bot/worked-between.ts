import type { Job, Statement } from "../model.ts";

const changes = ({ kind }: Statement): boolean => kind === "action" || kind === "part";

/** Whether something was done to a machine between two moments: it may well read otherwise since. */
export function workedBetween(job: Job, from: string, to: string): boolean {
  return job.statements.some(
    ({ at, statement, undone, deleted }) =>
      changes(statement) &&
      undone !== true &&
      deleted !== true &&
      Date.parse(at) > Date.parse(from) &&
      Date.parse(at) <= Date.parse(to),
  );
}

/** Whether a message itself tells that something was done. */
export const tellsWork = (statements: readonly Statement[]): boolean => statements.some(changes);
