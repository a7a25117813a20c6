import type { Case, Finding, Judgement } from "../model.ts";
import { acrossDeeds } from "./across-deeds.ts";
import { isBurner } from "./application.ts";
import { cautionsOf } from "./cautions-of.ts";
import { checks } from "./checks/list.ts";
import { diagnose } from "./diagnose.ts";
import type { Evidence } from "./evidence.ts";
import { findingEvidence, remarkEvidence, repairEvidence } from "./evidence.ts";
import { byRole } from "./in-heating.ts";
import { isInVain } from "./in-vain.ts";
import { nextChecks, withoutCharge } from "./next.ts";
import { underOwnLimits } from "./own-limits.ts";
import { withPutRight } from "./put-right.ts";
import type { Scene } from "./scene.ts";
import { sceneOf } from "./scene.ts";
import { stagesOf } from "./stages.ts";
import { standingNotes } from "./stand.ts";

/**
 * Judges a case: what each reading means now, which fault explains what caused the call, what to
 * check next, what can hurt. Never throws; nothing measured or observed gives an empty diagnosis.
 */
export function judge(whole: Case): Judgement {
  const stages = stagesOf(whole.notes);
  const all = sceneOf(whole);
  const untouched = stages.after.length === 0;
  const now = untouched ? all : sceneOf(whole, standingNotes(stages));
  const findings = findingsOf(now);
  const seen = untouched
    ? [...signsOf(now, findings).all, ...repairEvidence(now, false)]
    : causeEvidence(all, sceneOf(whole, stages.before), sceneOf(whole, stages.after));
  const evidence = byRole(seen, now);
  const suspects = diagnose(evidence, now);
  const since = untouched ? findings : findingsOf(sceneOf(whole, stages.after));
  // read again behind a repair, it is known how that stands
  const shown = untouched ? [] : findingEvidence(findings);
  return {
    findings: underOwnLimits(findings, now),
    diagnosis: isBlank(all, findings) ? [] : withPutRight(suspects, since, all),
    next: whole.notes.length === 0 ? [] : nextChecks(suspects, [...evidence, ...shown], now),
    cautions: cautionsOf(all, sceneOf(whole, whole.notes.slice(-1))),
  };
}

function findingsOf(scene: Scene): Finding[] {
  const found = checks.flatMap((check) => check.judge(scene));
  // two checks may hear the same words
  const key = ({ about, check, says }: Finding): string => `${about}|${check}|${says}`;
  const first = new Map<string, Finding>();
  for (const finding of found) if (!first.has(key(finding))) first.set(key(finding), finding);
  if (isBurner(scene) && scene.facts.refrigerant === undefined)
    return [...first.values()].map((one) => ({ ...one, says: withoutCharge(one.says) }));
  return [...first.values()];
}

/** Nothing was measured, observed or told that a check could use. */
function isBlank(scene: Scene, findings: readonly Finding[]): boolean {
  const told = findings.some((one) => (one.signs ?? []).length > 0);
  return scene.readings.length === 0 && scene.seen.length === 0 && !told;
}

/**
 * What speaks of the call's cause: the signs before the first repair, and what was mended. What
 * shows after a repair counts only where nothing adverse was found before it, and then only what
 * is adverse itself: a cured machine doesn't clear the cause. A repair that changed nothing is no
 * repair: all counts, and it speaks against the part.
 */
function causeEvidence(all: Scene, before: Scene, after: Scene): readonly Evidence[] {
  return acrossDeeds(all, [before, after], partsEvidence(all, before, after));
}

function partsEvidence(all: Scene, before: Scene, after: Scene): Evidence[] {
  const inVain = isInVain(after);
  const mended = repairEvidence(all, inVain);
  const first = signsOf(before, findingsOf(before));
  const cured = inVain || first.all.length > 0 ? [] : mended.filter((one) => isCure(one, all));
  if (cured.length > 0) return [...signsOf(after, findingsOf(after)).adverse, ...cured];
  if (inVain || first.all.length === 0) return [...signsOf(all, findingsOf(all)).all, ...mended];
  const leaks = signsOf(after, findingsOf(after)).adverse.filter((one) => one.sign === leakFound);
  const onlyUpkeep = mended.length > 0 && mended.every((one) => upkeep.includes(one.sign));
  if (first.adverse.length > 0 && !onlyUpkeep) return [...first.all, ...leaks, ...mended];
  return [...first.all, ...signsOf(after, findingsOf(after)).adverse, ...mended];
}

/** A hole was there before anything was recovered or opened to find it. */
const leakFound = "leak_traces:leak_found";
const upkeep: readonly string[] = ["mended:filter", "mended:coil"];
const better =
  /\b(?:now|fixed (?:it|that)|cured|came (?:up|down|back)|went (?:from|up|down|back)|dropped to|runs|running (?:good|fine|again))\b/;

/** A repair that nothing was measured before: upkeep is none, unless it is told what it changed. */
function isCure(one: Evidence, scene: Scene): boolean {
  return !upkeep.includes(one.sign) || better.test(scene.words);
}

interface Signs {
  readonly all: readonly Evidence[];
  readonly adverse: readonly Evidence[];
}

function signsOf(scene: Scene, findings: readonly Finding[]): Signs {
  const adverse = findings.filter((one) => one.level === "bad" || one.level === "watch");
  const remarks = remarkEvidence(scene);
  const unloads = findings.some(({ signs = [] }) => signs.includes("unloads:at_once"));
  // sides that met seconds after it stopped tell nothing of a start
  const said = unloads ? remarks.filter((one) => one.sign !== equalAtStart) : remarks;
  return {
    all: [...findingEvidence(findings).filter((one) => !isAheadOfFuse(one, remarks)), ...said],
    adverse: [
      ...findingEvidence(adverse),
      ...said.filter((one) => !fineRemarks.some((fine) => one.sign.endsWith(`:${fine}`))),
    ],
  };
}

const equalAtStart = "start_pressures:pressures_equal";

/** Volts at a transformer say nothing of the control circuit behind its open fuse. */
function isAheadOfFuse(one: Evidence, remarks: readonly Evidence[]): boolean {
  return (
    one.sign === "control:present" &&
    remarks.some((each) => each.sign === "protection:control_fuse_open")
  );
}

/** Remarks that name nothing wrong. */
const fineRemarks: readonly string[] = [
  "runs_normally",
  "sight_glass_clear",
  "pressures_equal",
  "no_leak_found",
  "no_acid",
  "coil_clean",
  "filter_clean",
  "fans_turning",
  "holding_steady",
  "cooling_again",
  "contactor_pulls_in",
  "fine",
];
