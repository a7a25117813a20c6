import type { NextCheck, Suspect } from "../model.ts";
import { shownBy } from "./diagnose.ts";
import type { Evidence } from "./evidence.ts";
import { groupOf } from "./evidence.ts";
import type { Fault } from "./fault.ts";
import { faults } from "./faults/list.ts";
import type { Scene } from "./scene.ts";
import { signGroups } from "./signs/list.ts";
import type { Step } from "./step.ts";
import { steps } from "./steps/list.ts";
import { whereFits } from "./where.ts";

/** How many are named. */
const named = 3;
/** Minutes that a unit of danger weighs. Common practice, no source. */
const minutesPerDanger = 4;
/** Chance that a proof confirms a true fault, and a false one. Common practice, no source. */
const proofShows = { true: 0.9, false: 0.12 } as const;
/** Above it the leading fault's own proofs come first, in their own order. */
const leads = 0.6;
/** Suspects below it need no proof of their own. */
const worthProving = 0.04;
/** Bit that a look must be expected to tell, to be named. Common practice, no source. */
const worthAsking = 0.03;

interface Candidate {
  readonly step: Step;
  /** bit expected */
  readonly gain: number;
  /** the same for its minutes and danger */
  readonly worth: number;
  readonly ofLeader: boolean;
}

/**
 * What to look at next: the most expected information for its minutes and danger, given what is
 * known; ties go to the safer one. Where a fault leads clearly, its proof comes first.
 */
export function nextChecks(
  diagnosis: readonly Suspect[],
  evidence: readonly Evidence[],
  scene: Scene,
): NextCheck[] {
  const known = new Set(evidence.map((one) => groupOf(one.sign)));
  const open = (step: Step) =>
    whereFits(step.where, scene) && !step.fills.some((group) => known.has(group));
  const leader = diagnosis[0];
  const general = steps.filter(open).map((step) => candidate(step, gainOf(step, diagnosis), false));
  const proofs = diagnosis
    .slice(0, 4)
    .flatMap((suspect) =>
      (suspect === leader || suspect.probability > worthProving ? proofOf(suspect) : [])
        .filter(open)
        .map((step) => candidate(step, proofGain(suspect.probability), suspect === leader)),
    );
  const sure = (leader?.probability ?? 0) >= leads;
  const ranked = [...proofs, ...general]
    .filter((one) => one.gain >= worthAsking || one.ofLeader)
    .sort((a, b) => compare(a, b, sure));
  return distinct(ranked)
    .slice(0, named)
    .map(({ check, why, minutes }) => ({ check, why, minutes }));
}

function candidate(step: Step, gain: number, ofLeader: boolean): Candidate {
  return {
    step,
    gain,
    worth: gain / (step.minutes + minutesPerDanger * step.danger + 1),
    ofLeader,
  };
}

/** A sure leader's proofs keep the order they are written in (the sort is stable). */
function compare(a: Candidate, b: Candidate, sure: boolean): number {
  if (sure && (a.ofLeader || b.ofLeader)) return Number(b.ofLeader) - Number(a.ofLeader);
  return b.worth - a.worth || a.step.danger - b.step.danger;
}

function distinct(ranked: readonly Candidate[]): Step[] {
  const found: Step[] = [];
  for (const { step } of ranked)
    if (!found.some((one) => one === step || sameLook(one, step))) found.push(step);
  return found;
}

function sameLook(a: Step, b: Step): boolean {
  return a.why === b.why || a.fills.some((group) => b.fills.includes(group));
}

function proofOf(suspect: Suspect): readonly Step[] {
  return faultByName.get(suspect.fault)?.proof ?? [];
}

const faultByName: ReadonlyMap<string, Fault> = new Map(faults.map((one) => [one.fault, one]));

/** Expected drop of entropy, bit, over what the step may show. */
function gainOf(step: Step, diagnosis: readonly Suspect[]): number {
  return step.fills.reduce((sum, group) => sum + groupGain(group, diagnosis), 0);
}

function groupGain(groupName: string, diagnosis: readonly Suspect[]): number {
  const group = signGroups.get(groupName);
  if (group === undefined || group.remarks === true) return 0;
  const outcomes = Object.keys(group.background);
  const joint = diagnosis.map((suspect) => jointOf(suspect, groupName, outcomes));
  return outcomes.reduce((sum, _, column) => {
    const total = joint.reduce((all, row) => all + (row[column] ?? 0), 0);
    return (
      sum +
      joint.reduce((all, row, at) => all + information(row[column] ?? 0, total, diagnosis[at]), 0)
    );
  }, 0);
}

/** P(fault and outcome), outcome by outcome. */
function jointOf(suspect: Suspect, groupName: string, outcomes: readonly string[]): number[] {
  const fault = faultByName.get(suspect.fault);
  if (fault === undefined) return outcomes.map(() => 0);
  const shown = outcomes.map((outcome) => shownBy(fault, groupName, outcome));
  const all = shown.reduce((sum, one) => sum + one, 0);
  return shown.map((one) => (suspect.probability * one) / all);
}

function information(joint: number, total: number, suspect: Suspect | undefined): number {
  if (joint <= 0 || suspect === undefined || suspect.probability <= 0) return 0;
  return joint * Math.log2(joint / (total * suspect.probability));
}

/** The same for a proof, which confirms or does not. */
function proofGain(probability: number): number {
  const yes = probability * proofShows.true + (1 - probability) * proofShows.false;
  return (
    entropy(yes) -
    probability * entropy(proofShows.true) -
    (1 - probability) * entropy(proofShows.false)
  );
}

function entropy(chance: number): number {
  if (chance <= 0 || chance >= 1) return 0;
  return -chance * Math.log2(chance) - (1 - chance) * Math.log2(1 - chance);
}
