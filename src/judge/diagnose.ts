import type { Suspect } from "../model.ts";
import type { Evidence } from "./evidence.ts";
import { groupOf } from "./evidence.ts";
import type { Fault } from "./fault.ts";
import { faults, sideOf } from "./faults/list.ts";
import type { Scene } from "./scene.ts";
import { likelihoodRatio } from "./shown.ts";
import { whereIn } from "./where.ts";

/** Odds beyond which a sign is named for or against a fault. */
const worthNaming = 1.5;

/**
 * Ranks the faults. Prior odds times, for each group of signs, the strongest sign for and the
 * strongest against; probabilities sum to 1 over every fault that is possible on this machine.
 */
export function diagnose(evidence: readonly Evidence[], scene: Scene): Suspect[] {
  const fits = whereIn(scene);
  const possible = faults.filter((one) => fits(one.where));
  const says = saysBySign(evidence);
  const signs = [...says.keys()];
  const looked = sideLookedAt(scene);
  const weighed = possible.map((fault) => {
    const elsewhere =
      looked !== undefined && sideOf(fault) !== undefined && sideOf(fault) !== looked;
    const prior = fault.common * (elsewhere ? otherSide : 1);
    return { fault, odds: prior * oddsOf(fault, signs) };
  });
  const total = weighed.reduce((sum, one) => sum + one.odds, 0);
  return weighed
    .map(({ fault, odds }) => ({
      fault: fault.fault,
      probability: odds / total,
      for: naming(fault, says, (ratio) => ratio > worthNaming),
      against: naming(fault, says, (ratio) => ratio < 1 / worthNaming),
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
function oddsOf(fault: Fault, signs: readonly string[]): number {
  const groups = new Map<string, { most: number; least: number }>();
  for (const sign of signs) {
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
  says: ReadonlyMap<string, ReadonlySet<string>>,
  counts: (ratio: number) => boolean,
): string[] {
  const named = [...says].filter(([sign]) => counts(likelihoodRatio(fault, sign)));
  return [...new Set(named.flatMap(([, words]) => [...words]))];
}

/** What was said for each sign, each sentence once. */
function saysBySign(evidence: readonly Evidence[]): ReadonlyMap<string, ReadonlySet<string>> {
  const says = new Map<string, Set<string>>();
  for (const one of evidence) {
    const words = says.get(one.sign);
    if (words === undefined) says.set(one.sign, new Set([one.says]));
    else words.add(one.says);
  }
  return says;
}
