import { isOutside } from "../judge/checks/leak-reminder.ts";
import { ownBasis } from "../judge/own-limit.ts";
import type { Finding, Job } from "../model.ts";

/** Over its limit, where the rule reaches the unit; in Europe any leak. A company's own limit sets no dates. */
export const asksRepair = (finding: Finding): boolean =>
  (finding.level === "bad" && !isOutside(finding) && finding.basis !== ownBasis) ||
  (inEurope(finding) && finding.level === "watch");

export const inEurope = ({ basis }: Finding): boolean => basis.startsWith("EU");

/** The circuit that a finding is about, where it is of one. */
export const circuitOf = ({ about }: Finding): string | undefined =>
  /^circuit /i.test(about) ? about : undefined;

/** When the refrigerant went in that dates are counted from. */
export function fromOf(job: Job, circuit: string | undefined): string {
  const added = job.readings.findLast(
    (r) =>
      r.quantity === "mass" &&
      r.action === "charged" &&
      (circuit === undefined || r.subject === undefined || r.subject === circuit),
  );
  return added?.taken ?? job.status_at;
}

type Said = Job["statements"][number]["statement"];

export function isRepair(said: Said): boolean {
  if (said.kind !== "action" || said.planned === true) return false;
  return said.action === "repaired" || said.action === "brazed" || said.action === "tightened";
}

/** What shows that a repair is tight. */
export function isVerification(said: Said): boolean {
  if (said.kind === "observation") {
    return said.denied !== true && ["no_leak_found", "holding_steady"].includes(said.observation);
  }
  return said.kind === "action" && said.action === "vacuum_isolated";
}

/** Somebody looked for leaks, and found one or none. */
export const isLeakCheck = (said: Said): boolean =>
  said.kind === "observation" &&
  said.denied !== true &&
  ["no_leak_found", "leak_found"].includes(said.observation);

/** When something was said at or after a moment, on these jobs, oldest first; "" is from the beginning. */
export function momentsOf(
  jobs: readonly Job[],
  from: string,
  fits: (said: Said) => boolean,
): readonly string[] {
  const since = from === "" ? Number.NEGATIVE_INFINITY : Date.parse(from);
  return jobs
    .flatMap((job) => job.statements)
    .filter((line) => line.undone !== true && line.deleted !== true && fits(line.statement))
    .map(({ at }) => at)
    .filter((at) => Date.parse(at) >= since)
    .sort((a, b) => Date.parse(a) - Date.parse(b));
}
