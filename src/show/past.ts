import type { Job } from "../model.ts";
import { listed } from "./wording.ts";

/** What a job changed on the machine, in a few words: "compressor 1 replaced". */
export function lastDone(job: Job): string {
  const fitted = job.parts.filter((p) => p.state === "fitted").map((p) => p.part);
  const acts = job.statements.flatMap(({ statement, undone, deleted }) =>
    undone === true || deleted === true ? [] : actWords(statement),
  );
  const replaced = fitted.map((part) => `${part} replaced`);
  return listed([...new Set([...replaced, ...acts])].slice(0, 4));
}

/** Work that tells the next person what was done; adjustments and waits do not. */
const telling = new Set(["replaced", "repaired", "brazed", "cleaned", "tightened"]);

function actWords(statement: Job["statements"][number]["statement"]): readonly string[] {
  if (statement.kind !== "action" || statement.planned === true) return [];
  if (!telling.has(statement.action)) return [];
  return [
    statement.what === undefined ? statement.action : `${statement.what} ${statement.action}`,
  ];
}
