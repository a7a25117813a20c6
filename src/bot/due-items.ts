import type { Finding, Job } from "../model.ts";
import { daysLater, followUpDays, repairDays } from "../physics/leak-rules.ts";
import type { DueItem, ExportJob } from "../show/exports/sheet-source.ts";

/** Days within which the European rule wants a repaired leak looked at again: Regulation (EU) 2024/573 Art. 4(7). */
const europeAgainDays = 30;

/**
 * What follows from a leak rate over its limit: repair with its first check, then the follow-up
 * check. Each is done by what the record proves, never by a word alone.
 */
export function dueItems(entry: ExportJob, later: readonly Job[]): readonly DueItem[] {
  const { job, judgement } = entry;
  const finding = judgement.findings.find(({ check }) => check === "leak_rate");
  if (finding === undefined || !asksRepair(finding)) return [];
  const added = job.readings.findLast((r) => r.quantity === "mass" && r.action === "charged");
  const from = added?.taken ?? job.status_at;
  const jobs = [job, ...later];
  const repaired = momentOf(jobs, from, isRepair);
  const verified = momentOf(jobs, repaired ?? from, isVerification);
  const europe = finding.basis.startsWith("EU");
  const repair: DueItem = {
    job: job.job,
    what: "leak repaired and first check",
    due: daysLater(from, repairDays.usual) ?? from.slice(0, 10),
    basis: finding.basis,
    ...(repaired !== undefined && verified !== undefined
      ? { state: "done", proof: `repair ${repaired.slice(0, 10)}, check ${verified.slice(0, 10)}` }
      : {
          state: "open",
          proof: "a repair said, and a pressure test, vacuum or no leak found after it",
        }),
  };
  if (verified === undefined || repaired === undefined) return [repair];
  const again = momentOf(jobs, dayAfter(verified), isVerification);
  const followUp: DueItem = {
    job: job.job,
    what: "follow-up check",
    due: daysLater(verified, europe ? europeAgainDays : followUpDays) ?? verified.slice(0, 10),
    basis: finding.basis,
    ...(again === undefined
      ? { state: "open", proof: "a later leak check with no leak found" }
      : { state: "done", proof: `check ${again.slice(0, 10)}` }),
  };
  return [repair, followUp];
}

/** Over its limit; in Europe any leak. */
const asksRepair = ({ level, basis }: Finding): boolean =>
  level === "bad" || (basis.startsWith("EU") && level === "watch");

const dayAfter = (iso: string): string => new Date(Date.parse(iso) + 43_200_000).toISOString();

type Said = Job["statements"][number]["statement"];

function isRepair(said: Said): boolean {
  if (said.kind !== "action" || said.planned === true) return false;
  return said.action === "repaired" || said.action === "brazed" || said.action === "tightened";
}

function isVerification(said: Said): boolean {
  if (said.kind === "observation") {
    return said.denied !== true && ["no_leak_found", "holding_steady"].includes(said.observation);
  }
  return said.kind === "action" && said.action === "vacuum_isolated";
}

/** When something was first said at or after a moment, on these jobs. */
function momentOf(
  jobs: readonly Job[],
  from: string,
  fits: (said: Said) => boolean,
): string | undefined {
  return jobs
    .flatMap((job) => job.statements)
    .filter((line) => line.undone !== true && line.deleted !== true && fits(line.statement))
    .map(({ at }) => at)
    .filter((at) => Date.parse(at) >= Date.parse(from))
    .sort((a, b) => Date.parse(a) - Date.parse(b))[0];
}
