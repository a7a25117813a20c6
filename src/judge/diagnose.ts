import type { Suspect } from "../model.ts";
import type { Evidence } from "./evidence.ts";
import { groupOf } from "./evidence.ts";
import type { Fault } from "./fault.ts";
import { faults, sideOf } from "./faults/list.ts";
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
  const looked = sideLookedAt(scene);
  const weighed = possible.map((fault) => {
    const elsewhere =
      looked !== undefined && sideOf(fault) !== undefined && sideOf(fault) !== looked;
    const prior = fault.common * (elsewhere ? otherSide : 1);
    return { fault, odds: prior * oddsOf(fault, evidence) };
  });
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

/** Where only one side was measured, the complaint seldom led away from the cause. Common practice, no source. */
const otherSide = 0.35;

const electricalQuantities: readonly string[] = [
  "insulation_resistance",
  "winding_resistance",
  "resistance",
  "voltage",
  "current",
  "capacitance",
  "diode_drop",
];
const gasQuantities: readonly string[] = [
  "pressure",
  "superheat",
  "subcooling",
  "vacuum",
  "temperature",
  "temperature_difference",
  "static_pressure",
  "mass",
];

/** The side that alone was measured; undefined for both or none. */
function sideLookedAt(scene: Scene): "electrical" | "gas" | undefined {
  const measured = scene.readings.filter((one) => one.at !== "shell").map((one) => one.quantity);
  const electrical = measured.some((one) => electricalQuantities.includes(one));
  const gas = measured.some((one) => gasQuantities.includes(one));
  if (electrical === gas) return;
  return electrical ? "electrical" : "gas";
}

/**
 * The tables err on the cautious side: with this weight of evidence the simulated faults are
 * believed as often as they are true. Fitted, `tests/judge-simulation.test.ts`.
 */
const evidenceWeight = 1.25;

/** How far the evidence moves a fault's odds. */
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
  return [...groups.values()].reduce(
    (odds, one) => odds * (one.most * one.least) ** evidenceWeight,
    1,
  );
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
