import type { Case, CaseNote, Caution, Finding, Judgement } from "../model.ts";
import type { CautionRule } from "./caution.ts";
import { cautions } from "./cautions/list.ts";
import { checks } from "./checks/list.ts";
import { diagnose } from "./diagnose.ts";
import type { Evidence } from "./evidence.ts";
import { findingEvidence, remarkEvidence, repairEvidence } from "./evidence.ts";
import { nextChecks } from "./next.ts";
import type { Scene } from "./scene.ts";
import { sceneOf } from "./scene.ts";
import type { Stages } from "./stages.ts";
import { stagesOf } from "./stages.ts";
import { standingNotes } from "./stand.ts";

/** Cautions in one judgement. */
const mostCautions = 2;

/**
 * Judges a case: what each reading means now, which fault explains what caused the call, what to
 * check next, what can hurt. Never throws; nothing measured or observed gives an empty diagnosis.
 */
export function judge(whole: Case): Judgement {
  const stages = stagesOf(whole.notes);
  const now = sceneOf(whole, standingNotes(stages));
  const findings = findingsOf(now);
  const evidence = evidenceOf(whole, stages);
  const diagnosis = isBlank(sceneOf(whole)) ? [] : diagnose(evidence, now);
  return {
    findings,
    diagnosis,
    next: nextChecks(diagnosis, evidence, now),
    cautions: cautionsOf(whole),
  };
}

function findingsOf(scene: Scene): Finding[] {
  return checks.flatMap((check) => check.judge(scene));
}

function isBlank(scene: Scene): boolean {
  return scene.readings.length === 0 && scene.seen.length === 0;
}

/**
 * What speaks of the call's cause: the signs before the first repair, and what was mended. What
 * shows after a repair counts only where nothing adverse was found before it, and then only what
 * is adverse itself: a cured machine doesn't clear the cause. A repair that changed nothing is no
 * repair: all counts, and it speaks against the part.
 */
function evidenceOf(whole: Case, stages: Stages): Evidence[] {
  const inVain = sceneOf(whole, stages.after).seen.some((one) => one.observation === "no_change");
  const mended = repairEvidence(sceneOf(whole), inVain);
  const before = signsIn(whole, stages.before);
  if (inVain || before.all.length === 0) return [...signsIn(whole, whole.notes).all, ...mended];
  if (before.adverse.length > 0) return [...before.all, ...mended];
  return [...before.all, ...signsIn(whole, stages.after).adverse, ...mended];
}

interface Signs {
  readonly all: readonly Evidence[];
  readonly adverse: readonly Evidence[];
}

function signsIn(whole: Case, notes: readonly CaseNote[]): Signs {
  const scene = sceneOf(whole, notes);
  const findings = findingsOf(scene);
  const adverse = findings.filter((one) => one.level === "bad" || one.level === "watch");
  const remarks = remarkEvidence(scene);
  return {
    all: [...findingEvidence(findings), ...remarks],
    adverse: [
      ...findingEvidence(adverse),
      ...remarks.filter((one) => !fineRemarks.some((fine) => one.sign.endsWith(`:${fine}`))),
    ],
  };
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

const gravity = { danger: 3, warning: 2, notice: 1 } as const;
/** What the last message brings up counts more than what was said before. */
const fresh = 0.5;

/**
 * The cautions nearest to what is done now, at most two and one of an id; of those the most
 * serious stands first.
 */
function cautionsOf(whole: Case): Caution[] {
  const scene = sceneOf(whole);
  const last = sceneOf(whole, whole.notes.slice(-1));
  const fitting = cautions
    .map((rule) => ({ rule, near: nearness(rule, scene, last) }))
    .filter((one) => one.near > 0)
    .sort((a, b) => b.near - a.near || gravity[b.rule.severity] - gravity[a.rule.severity])
    .map((one) => one.rule);
  return fitting
    .filter((rule, at) => fitting.findIndex((one) => one.id === rule.id) === at)
    .slice(0, mostCautions)
    .sort((a, b) => gravity[b.severity] - gravity[a.severity])
    .map(({ id, says, source, severity }) => ({ id, says, source, severity }));
}

function nearness(rule: CautionRule, scene: Scene, last: Scene): number {
  const now = rule.fits(last);
  return Math.max(rule.fits(scene) ?? 0, now === undefined ? 0 : now + fresh);
}
