import type { Suspect } from "../model.ts";
import type { Evidence } from "./evidence.ts";
import { groupOf } from "./evidence.ts";
import type { Fault } from "./fault.ts";
import { faults } from "./faults/list.ts";
import type { Scene } from "./scene.ts";
import { likelihoodRatio } from "./shown.ts";
import { whereFits } from "./where.ts";

/** Odds beyond which a sign is named for or against a fault. */
const worthNaming = 1.5;

/**
 * Ranks the faults. Prior odds times, for each group of signs, the strongest sign for and the
 * strongest against; probabilities sum to 1 over every fault that is possible on this machine.
 */
export function diagnose(evidence: readonly Evidence[], scene: Scene): Suspect[] {
  const possible = faults.filter((one) => whereFits(one.where, scene));
  const weighed = possible.map((fault) => ({ fault, odds: oddsOf(fault, evidence) }));
  const total = weighed.reduce((sum, one) => sum + one.odds, 0);
  return weighed
    .map(({ fault, odds }) => ({
      fault: fault.fault,
      probability: odds / total,
      for: naming(fault, evidence, (ratio) => ratio > worthNaming),
      against: naming(fault, evidence, (ratio) => ratio < 1 / worthNaming),
    }))
    .sort((a, b) => b.probability - a.probability);
}

function oddsOf(fault: Fault, evidence: readonly Evidence[]): number {
  const groups = new Map<string, { most: number; least: number }>();
  for (const { sign } of evidence) {
    const ratio = likelihoodRatio(fault, sign);
    const had = groups.get(groupOf(sign)) ?? { most: 1, least: 1 };
    groups.set(groupOf(sign), {
      most: Math.max(had.most, ratio),
      least: Math.min(had.least, ratio),
    });
  }
  return [...groups.values()].reduce((odds, one) => odds * one.most * one.least, fault.common);
}

function naming(
  fault: Fault,
  evidence: readonly Evidence[],
  counts: (ratio: number) => boolean,
): string[] {
  const says = evidence
    .filter(({ sign }) => counts(likelihoodRatio(fault, sign)))
    .map((one) => one.says);
  return [...new Set(says)];
}
