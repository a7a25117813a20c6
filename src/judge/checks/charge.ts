import type { Finding } from "../../model.ts";
import { kilogramPerPound } from "../../physics/constants.ts";
import { cylinderFillKg } from "../../physics/cylinder-fill.ts";
import type { Check } from "../check.ts";
import { refrigerantOf } from "../circuit.ts";
import { type Figures, figuresOf } from "../figures.ts";
import { sumsOf } from "../masses.ts";
import { numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { chargeUndecided } from "./charge-undecided.ts";
import { recoveryLevel } from "./recovery.ts";
import { testCharge } from "./test-charge.ts";

/** Share of the plate's charge that came out, between which the charge was right. Common practice, no source. */
const right = { from: 0.88, to: 1.1 } as const;
/** Share of the plate's charge that goes back in without a question. Common practice, no source. */
const inTolerance = 0.05;

/** Weights in and out against the plate and the cylinder, and charge by forced test operation. */
export const charge: Check = {
  name: "charge",
  examples: [
    {
      level: "watch",
      notes: ["recovered 11 kg"],
      equipment: { refrigerant: "R-410A", charge_kg: 18 },
    },
    {
      level: "good",
      notes: ["recovered 17.8 kg"],
      equipment: { refrigerant: "R-410A", charge_kg: 18 },
    },
    {
      level: "unknown",
      notes: ["suction 118 psig 50 F"],
      equipment: {
        drive: "inverter",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
        operation: "normal",
        kind: "outdoor unit",
      },
    },
  ],
  signs: [
    "weighed:short",
    "weighed:right",
    "weighed:over",
    "test_charge:short",
    "test_charge:right",
    "test_charge:over",
  ],
  judge: (scene) => {
    const figures = figuresOf(scene);
    return [
      ...putIn(scene, figures),
      ...recovered(scene, figures),
      ...cylinder(scene, figures),
      ...recoveryLevel(scene, figures),
      ...testCharge(scene, figures),
      ...chargeUndecided(scene),
    ];
  },
};

/** A whole charge weighed out tells what was in it. */
function recovered(scene: Scene, figures: Figures): Finding[] {
  const plateKg = scene.facts.charge_kg;
  const { inKg, outKg } = sumsOf(scene);
  // what stayed in the receiver was not weighed
  if (plateKg === undefined || outKg <= 0 || isPumpedDown(scene)) return [];
  const share = outKg / plateKg;
  const outcome = share < right.from ? "short" : share > right.to ? "over" : "right";
  const percent = Math.round(share * 100);
  return [
    {
      about: "system",
      check: "charge",
      // once it is charged again, what came out is history
      level: outcome === "right" || inKg > 0 ? "good" : "watch",
      says: `${figures.mass(outKg)} came out of a plate charge of ${figures.mass(plateKg)}, ${percent} percent: ${meanings[outcome]}`,
      brief: `${percent} percent of the plate charge came out`,
      values: { recovered_percent: share * 100 },
      basis: "weighed",
      source: "balance of weights; bounds of 88 and 110 percent common practice, no source",
      signs: [`weighed:${outcome}`],
    },
  ];
}

const meanings = {
  short: "it was short, unless some stayed in a part that was valved off",
  right: "what the plate asks for",
  over: "too much, unless long lines carry their own addition",
} as const;

/** What was charged against the plate and the line set, once nothing else was in it. */
function putIn(scene: Scene, figures: Figures): Finding[] {
  const plateKg = scene.facts.charge_kg;
  const { inKg, outKg } = sumsOf(scene);
  if (plateKg === undefined || inKg <= 0 || outKg <= 0) return [];
  if (isPumpedDown(scene)) return [putBack({ inKg, outKg, plateKg }, figures)];
  const over = inKg - plateKg;
  const fits = Math.abs(over) <= inTolerance * plateKg;
  const lines = (scene.facts.line_set?.length ?? 0) > 0;
  const words = fits
    ? "as the plate asks"
    : over > 0
      ? `${figures.mass(over)} over the plate${lines ? "; see the line set's addition" : ": right only with a line set longer than the plate covers"}`
      : `${figures.mass(-over)} under the plate`;
  return [
    {
      about: "system",
      check: "charge",
      level: fits || (over > 0 && lines) ? "good" : "watch",
      says: `${figures.mass(inKg)} in, ${figures.mass(outKg)} out: ${words}`,
      brief: `${figures.mass(inKg)} in, ${fits ? "as the plate asks" : over > 0 ? "over the plate" : "under the plate"}`,
      values: { charged_kg: inKg },
      basis: "plate charge",
      source: "plate; 5 percent common practice, no source",
    },
  ];
}

/** The charge was pumped into the receiver and stayed: only what came out can be weighed back. */
function isPumpedDown(scene: Scene): boolean {
  return scene.done.some(({ action }) => action === "pumped_down");
}

/** What went back into a part that was pumped down, against what came out of it. */
function putBack(
  kg: { readonly inKg: number; readonly outKg: number; readonly plateKg: number },
  figures: Figures,
): Finding {
  const more = kg.inKg - kg.outKg;
  const fits = Math.abs(more) <= inTolerance * kg.outKg;
  const [went, came] = [figures.mass(kg.inKg), figures.mass(kg.outKg)];
  const words = fits
    ? "as much as came out; the rest stayed pumped down"
    : `${figures.mass(Math.abs(more))} ${more > 0 ? "more" : "less"} than came out, and the rest stayed pumped down`;
  return {
    about: "system",
    check: "charge",
    level: fits || kg.inKg < kg.outKg ? "good" : "watch",
    says: `${went} in, ${came} out: ${words}`,
    brief: `${went} in, ${came} out`,
    values: { charged_kg: kg.inKg },
    basis: "balance of weights",
    source: "balance of weights; 5 percent common practice, no source",
  };
}

/** The recovery cylinder's limit, where its water capacity was said. */
function cylinder(scene: Scene, figures: Figures): Finding[] {
  const refrigerant = refrigerantOf(scene);
  const capacityKg = waterCapacityKg(scene);
  if (refrigerant === undefined || capacityKg === undefined) return [];
  const limitKg = cylinderFillKg(capacityKg, refrigerant);
  if (limitKg === undefined) return [];
  const { outKg } = sumsOf(scene);
  const full = outKg > limitKg;
  return [
    {
      about: "recovery cylinder",
      check: "charge",
      level: full ? "bad" : "good",
      says: `That cylinder takes ${figures.mass(limitKg)} of ${refrigerant} at most, 80 percent by volume at 77 F${full ? `; ${figures.mass(outKg)} is over it` : ""}`,
      brief: `cylinder takes ${figures.mass(limitKg)}`,
      values: { cylinder_limit_kg: limitKg },
      basis: "80 percent fill",
      source: "AHRI Guideline K; 49 CFR 173.304a (from memory)",
    },
  ];
}

const figure = String.raw`(\d+(?:\.\d+)?) ?(lbs?|pounds?|kg|kilos?)?`;
const named = String.raw`(?:\bw\.?c\b\.?|water capacity)`;
const capacities = [
  // "tw 28.5 wc 47.7": the letters lead their figures
  new RegExp(`\\b(?:tw|t\\.w\\.?|tare)\\W+[\\d.]+\\D{0,8}?${named}(?: is| of|:)? ?${figure}`),
  new RegExp(`${figure} ?(?:of )?${named}`),
  new RegExp(`${named}(?: is| of|:)? ?${figure}`),
];
const cylinderWords = /\b(?:tank|cylinder|cyl|bottle|drum|jug)\b/;

/** As stamped on the collar, kg; without a unit in the house's own. */
function waterCapacityKg(scene: Scene): number | undefined {
  const read = scene.readings
    .concat(scene.ratings)
    .find((one) => one.quantity === "mass" && new RegExp(named).test(one.said.toLowerCase()));
  if (read !== undefined) return numberOf(read);
  for (const { text = "" } of scene.notes) {
    const words = text.toLowerCase();
    if (!cylinderWords.test(words)) continue;
    const said = capacities.map((one) => one.exec(words)).find((one) => one !== null);
    if (said !== undefined && said !== null)
      return Number(said[1]) * (/^k/.test(said[2] ?? "") ? 1 : kilogramPerPound);
  }
  return undefined;
}
