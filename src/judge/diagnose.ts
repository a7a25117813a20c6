import type { Suspect } from "../model.ts";
import { attemptWeight, isAtWork } from "./attempt.ts";
import type { Evidence } from "./evidence.ts";
import { groupOf } from "./evidence.ts";
import type { Fault } from "./fault.ts";
import { faults, sideOf } from "./faults/list.ts";
import type { Scene } from "./scene.ts";
import { likelihoodRatios } from "./shown.ts";
import { whereIn } from "./where.ts";

/** Odds beyond which a sign is named for or against a fault. */
const worthNaming = 1.5;

/**
 * Ranks the faults. Prior odds times, for each group of signs, the strongest sign for and the
 * strongest against; probabilities sum to 1 over every fault that is possible on this machine.
 */
export function diagnose(evidence: readonly Evidence[], scene: Scene): Suspect[] {
  const fits = whereIn(scene);
  const signs = signsOf(evidence.filter(({ sign }) => isAtWork(sign, scene)));
  const looked = sideLookedAt(scene);
  const attempted = attemptWeight(scene);
  const weighed = faults
    .filter((one) => fits(one.where))
    .map((fault) => {
      const ratios: number[] = [];
      for (const one of signs) ratios.push(one.ratios.get(fault) ?? 1);
      const side = sideOf(fault);
      const elsewhere = looked !== undefined && side !== undefined && side !== looked;
      const prior =
        fault.common * (elsewhere ? otherSide : 1) * (fault.attempt === true ? attempted : 1);
      return { fault, ratios, odds: prior * oddsFrom(signs, ratios) };
    });
  const total = weighed.reduce((sum, one) => sum + one.odds, 0);
  return weighed
    .map(({ fault, ratios, odds }) => ({
      fault: fault.fault,
      probability: odds / total,
      for: naming(signs, ratios, "for"),
      against: naming(signs, ratios, "against"),
    }))
    .sort((a, b) => b.probability - a.probability);
}

/** One sign with all that was said of it. */
interface Sign {
  readonly ratios: ReadonlyMap<Fault, number>;
  /** its group, by its number among those of the signs */
  readonly group: number;
  readonly says: ReadonlySet<string>;
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

/** How far the evidence moves a fault's odds: a group's strongest for and strongest against. */
function oddsFrom(signs: readonly Sign[], ratios: readonly number[]): number {
  const most: number[] = [];
  const least: number[] = [];
  let at = 0;
  for (const { group } of signs) {
    const ratio = ratios[at++] ?? 1;
    most[group] = Math.max(most[group] ?? 1, ratio);
    least[group] = Math.min(least[group] ?? 1, ratio);
  }
  let odds = 1;
  for (let group = 0; group < most.length; group++)
    odds *= ((most[group] ?? 1) * (least[group] ?? 1)) ** evidenceWeight;
  return odds;
}

/** What the signs that count say, what weighs most first. */
function naming(
  signs: readonly Sign[],
  ratios: readonly number[],
  side: "for" | "against",
): string[] {
  const named: { readonly says: ReadonlySet<string>; readonly weight: number }[] = [];
  let at = 0;
  for (const { says } of signs) {
    const ratio = ratios[at++] ?? 1;
    if (side === "for" ? ratio > worthNaming : ratio < 1 / worthNaming)
      named.push({ says, weight: Math.abs(Math.log(ratio)) });
  }
  if (named.length === 0) return [];
  return [...new Set(named.sort((a, b) => b.weight - a.weight).flatMap(({ says }) => [...says]))];
}

/** Each sign once, with its sentences. */
function signsOf(evidence: readonly Evidence[]): Sign[] {
  const says = new Map<string, Set<string>>();
  for (const one of evidence) {
    const words = says.get(one.sign);
    if (words === undefined) says.set(one.sign, new Set([one.says]));
    else words.add(one.says);
  }
  const groups = [...new Set([...says.keys()].map(groupOf))];
  return [...says].map(([sign, words]) => ({
    ratios: likelihoodRatios(sign),
    group: groups.indexOf(groupOf(sign)),
    says: words,
  }));
}
