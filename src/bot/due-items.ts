import type { EquipmentFacts, Finding, Job } from "../model.ts";
import { daysLater, followUpDays, repairDays } from "../physics/leak-rules.ts";
import type { DueItem, ExportJob } from "../show/exports/sheet-source.ts";
import { localTime } from "../show/local-time.ts";
import {
  asksRepair,
  circuitOf,
  fromOf,
  inEurope,
  isRepair,
  isVerification,
  momentsOf,
} from "./leak-moments.ts";

/** Days within which the European rule wants a repaired leak looked at again, and hours before which it is too early: Regulation (EU) 2024/573 Art. 4. */
const europeAgain = { days: 30, hours: 24 } as const;
/** h after the first check: what is said sooner is the same check. Our choice, no source. */
const sameCheckHours = 12;

/**
 * What follows from a leak rate over its limit: repair with its first check, then the follow-up
 * check. Each is done by what the record proves, never by a word alone. Days are counted in `zone`.
 */
export function dueItems(
  entry: ExportJob,
  later: readonly Job[],
  zone: string,
): readonly DueItem[] {
  return entry.judgement.findings
    .filter((finding) => finding.check === "leak_rate" && asksRepair(finding))
    .flatMap((finding) => itemsOf(finding, { entry, later, zone }));
}

interface Due {
  readonly entry: ExportJob;
  readonly later: readonly Job[];
  readonly zone: string;
}

function itemsOf(finding: Finding, { entry, later, zone }: Due): readonly DueItem[] {
  const { job, equipment } = entry;
  const circuit = circuitOf(finding);
  const of = circuit === undefined ? "" : `${circuit}: `;
  const from = fromOf(job, circuit);
  const jobs = [job, ...later];
  const repaired = momentsOf(jobs, from, isRepair)[0];
  const verified = momentsOf(jobs, repaired ?? from, isVerification)[0];
  const day = (iso: string): string => localTime(iso, zone)?.date ?? iso.slice(0, 10);
  const repair: DueItem = {
    job: job.job,
    kind: "repair",
    what: `${of}${repairWords(equipment, day(from))}`,
    due: daysLater(day(from), repairDays.usual) ?? day(from),
    basis: finding.basis,
    ...(repaired !== undefined && verified !== undefined
      ? { state: "done", proof: `repair ${day(repaired)}, check ${day(verified)}` }
      : {
          state: "open",
          proof: "a repair said, and a pressure test, vacuum or no leak found after it",
        }),
  };
  if (verified === undefined || repaired === undefined) return [repair];
  const hours = inEurope(finding) ? europeAgain.hours : sameCheckHours;
  const again = momentsOf(jobs, hoursAfter(verified, hours), isVerification)[0];
  const days = inEurope(finding) ? europeAgain.days : followUpDays;
  const followUp: DueItem = {
    job: job.job,
    kind: "follow_up",
    what: `${of}follow-up check`,
    due: daysLater(day(verified), days) ?? day(verified),
    basis: finding.basis,
    ...(again === undefined
      ? { state: "open", proof: "a later leak check with no leak found" }
      : { state: "done", proof: `check ${day(again)}` }),
  };
  return [repair, followUp];
}

/** "…; by 2026-09-09 where the process must stop for it" */
function repairWords({ use }: EquipmentFacts, from: string): string {
  const longest = daysLater(from, repairDays.processShutdown);
  const stop =
    use === "industrial_process" ? `; by ${longest} where the process must stop for it` : "";
  return `leak repaired and first check${stop}`;
}

const hoursAfter = (iso: string, hours: number): string =>
  new Date(Date.parse(iso) + hours * 3_600_000).toISOString();
