import { isOutside } from "../judge/checks/leak-reminder.ts";
import { ownBasis } from "../judge/own-limit.ts";
import type { EquipmentFacts, Finding, Job } from "../model.ts";
import { daysLater, followUpDays, repairDays } from "../physics/leak-rules.ts";
import type { DueItem, ExportJob } from "../show/exports/sheet-source.ts";
import { localTime } from "../show/local-time.ts";

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
  const circuit = /^circuit /i.test(finding.about) ? finding.about : undefined;
  const of = circuit === undefined ? "" : `${circuit}: `;
  const added = job.readings.findLast(
    (r) =>
      r.quantity === "mass" &&
      r.action === "charged" &&
      (circuit === undefined || r.subject === undefined || r.subject === circuit),
  );
  const from = added?.taken ?? job.status_at;
  const jobs = [job, ...later];
  const repaired = momentOf(jobs, from, isRepair);
  const verified = momentOf(jobs, repaired ?? from, isVerification);
  const day = (iso: string): string => localTime(iso, zone)?.date ?? iso.slice(0, 10);
  const repair: DueItem = {
    job: job.job,
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
  const again = momentOf(jobs, hoursAfter(verified, hours), isVerification);
  const days = inEurope(finding) ? europeAgain.days : followUpDays;
  const followUp: DueItem = {
    job: job.job,
    what: `${of}follow-up check`,
    due: daysLater(day(verified), days) ?? day(verified),
    basis: finding.basis,
    ...(again === undefined
      ? { state: "open", proof: "a later leak check with no leak found" }
      : { state: "done", proof: `check ${day(again)}` }),
  };
  return [repair, followUp];
}

/** Over its limit, where the rule reaches the unit; in Europe any leak. A company's own limit sets no dates. */
const asksRepair = (finding: Finding): boolean =>
  (finding.level === "bad" && !isOutside(finding) && finding.basis !== ownBasis) ||
  (inEurope(finding) && finding.level === "watch");

const inEurope = ({ basis }: Finding): boolean => basis.startsWith("EU");

/** "…; by 2026-09-09 where the process must stop for it" */
function repairWords({ use }: EquipmentFacts, from: string): string {
  const longest = daysLater(from, repairDays.processShutdown);
  const stop =
    use === "industrial_process" ? `; by ${longest} where the process must stop for it` : "";
  return `leak repaired and first check${stop}`;
}

const hoursAfter = (iso: string, hours: number): string =>
  new Date(Date.parse(iso) + hours * 3_600_000).toISOString();

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
