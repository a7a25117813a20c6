import type { Finding, Reading } from "../../model.ts";
import {
  absorptionBand,
  indexLimitOhm,
  minimumPolarizationIndex,
} from "../../physics/insulation.ts";
import type { Check } from "../check.ts";
import { bySubject, numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { ohmWords, plain } from "../words.ts";

/** s, moments of the timed readings, with what a technician's watch allows. Source: IEEE 43-2013, 5. */
const tenMinutes = { from: 540, to: 660 } as const;
const oneMinute = { from: 50, to: 75 } as const;
const halfMinute = { from: 25, to: 35 } as const;

/** The timed ratios of one insulation test: information, never a ground to fail a hermetic motor. */
export const polarization: Check = {
  name: "polarization",
  examples: [
    {
      level: "good",
      notes: ["cooling tower motor insulation at 40 C and 500 V: 1 min 220 meg, 10 min 506 meg"],
    },
    {
      level: "unknown",
      notes: ["insulation on lead 1 at 40 C and 500 V: 1 min 6.2 gig, 10 min 7.4 gig"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
  ],
  signs: ["polarization:falls"],
  judge: (scene) =>
    bySubject(
      ofQuantity(scene.readings, "insulation_resistance", "polarization_index", "absorption_ratio"),
      "compressor",
    ).flatMap(([about, readings]) => [
      ...indexFinding(about, readings, scene),
      ...absorptionFinding(about, readings),
    ]),
};

/** Its number at a moment. */
function at(readings: readonly Reading[], window: { from: number; to: number }) {
  const found = readings.find(
    (one) => one.after_s !== undefined && one.after_s >= window.from && one.after_s <= window.to,
  );
  return found === undefined ? undefined : numberOf(found);
}

function direct(readings: readonly Reading[], name: "polarization_index" | "absorption_ratio") {
  const found = ofQuantity(readings, name)[0];
  return found === undefined ? undefined : numberOf(found);
}

function indexFinding(about: string, readings: readonly Reading[], scene: Scene): Finding[] {
  const one = at(readings, oneMinute);
  const ten = at(readings, tenMinutes);
  const computed = one !== undefined && ten !== undefined && one > 0 ? ten / one : undefined;
  const index = computed ?? direct(readings, "polarization_index");
  if (index === undefined) return [];
  const least = minimumPolarizationIndex(scene.facts.winding_class ?? "F") ?? 2;
  const says =
    one !== undefined && one > indexLimitOhm
      ? `Index ${plain(index)}, but above ${ohmWords(indexLimitOhm)} it says nothing`
      : `Index ${plain(index)} (${least} is asked of large windings), not judged on a hermetic motor: its absorption current dies within seconds`;
  const falls = index < 1 && (one === undefined || one <= indexLimitOhm);
  if (isOpenMotor(scene) && !falls && (one === undefined || one <= indexLimitOhm))
    return [openMotor(about, index, least)];
  return [
    {
      about,
      check: "polarization",
      level: falls ? "watch" : "unknown",
      brief: falls ? "the index falls while you test" : "says nothing on this motor",
      says: falls
        ? `Index ${plain(index)}: it falls while you test, repeat it dry and clean`
        : says,
      values: { polarization_index: index },
      basis: "IEEE 43",
      source:
        "IEEE 43-2013 5.4 and 12.2: not above 5000 megohm, may not apply to small random-wound motors",
      signs: falls ? ["polarization:falls"] : [],
      ...(falls ? {} : { missing: "a motor that the index applies to" }),
    },
  ];
}

/** A motor outside the refrigerant, or of a voltage that has form-wound coils: the index holds there. */
function isOpenMotor(scene: Scene): boolean {
  if (/\bhermetic|\bsemi-?hermetic/.test(scene.words.replace(/\bnot hermetic/g, ""))) return false;
  return (
    (scene.facts.supply_V ?? 0) >= formWoundV ||
    /\bopen[- ]drive|\bform[- ]wound|\b(?:tower|pump|air handler|cooling tower|blower) motor\b/.test(
      scene.words,
    )
  );
}

/** V; motors of this voltage and more are form-wound. Common practice, no source. */
const formWoundV = 2300;

function openMotor(about: string, index: number, least: number): Finding {
  const enough = index >= least;
  return {
    about,
    check: "polarization",
    level: enough ? "good" : "watch",
    brief: enough ? "dry and clean by its index" : "under the least index",
    says: enough
      ? `Index ${plain(index)}, at least ${least} is asked of such a winding: dry and clean`
      : `Index ${plain(index)}, under the ${least} asked of such a winding: moisture or dirt on it, dry and clean it and test again`,
    values: { polarization_index: index },
    basis: "IEEE 43",
    source: "IEEE 43-2013 12.2: least index by thermal class, large form-wound windings",
    signs: enough ? [] : ["polarization:falls"],
  };
}

function absorptionFinding(about: string, readings: readonly Reading[]): Finding[] {
  const thirty = at(readings, halfMinute);
  const sixty = at(readings, oneMinute);
  const computed =
    thirty !== undefined && sixty !== undefined && thirty > 0 ? sixty / thirty : undefined;
  const ratio = computed ?? direct(readings, "absorption_ratio");
  if (ratio === undefined) return [];
  const band = absorptionBand(ratio);
  const meaningless = sixty !== undefined && sixty > indexLimitOhm;
  const well = band === "good" || band === "excellent";
  const level = meaningless ? "unknown" : band === "bad" ? "watch" : well ? "good" : "unknown";
  return [
    {
      about,
      check: "polarization",
      level,
      brief: meaningless ? "above 5 gigohm it says nothing" : `${band} by the usual table`,
      says: meaningless
        ? `Absorption ratio ${plain(ratio)}, but above ${ohmWords(indexLimitOhm)} it says nothing`
        : `Absorption ratio ${plain(ratio)}, by the usual table ${band}; on a small motor it decides nothing alone`,
      values: { absorption_ratio: ratio },
      basis: "common practice",
      source: "common practice, no source: bands of 1, 1.25, 1.4 and 1.6",
      signs: level === "watch" ? ["polarization:falls"] : [],
      ...(level === "unknown" ? { missing: "a ratio that decides on a small motor" } : {}),
    },
  ];
}
