import type { Job } from "../model.ts";

const works = new Set(["replaced", "repaired", "brazed", "charged", "cleaned"]);

/** When the machine was changed first: what was read later shows whether it held. ISO. */
export function workedAt(job: Job): string | undefined {
  const fitted = job.parts.filter(({ state }) => state === "fitted").map(({ at }) => at);
  const acts = job.statements.flatMap(({ statement, at, undone, deleted }) =>
    statement.kind === "action" &&
    statement.planned !== true &&
    undone !== true &&
    deleted !== true &&
    works.has(statement.action)
      ? [at]
      : [],
  );
  return [...fitted, ...acts].sort((a, b) => Date.parse(a) - Date.parse(b))[0];
}
