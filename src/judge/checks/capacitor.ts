import type { Finding, Reading, Statement } from "../../model.ts";
import {
  capacitanceErrorPercent,
  capacitanceUnderLoadF,
  runTolerancePercent,
} from "../../physics/capacitor.ts";
import type { Check } from "../check.ts";
import { noteOf, noteWords } from "../near.ts";
import { numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { microfaradWords, plain } from "../words.ts";
import { told } from "./told.ts";

/** Hz where none was said. */
const usualHz = 60;
/** Percent under the rating: a weak one is common, one further down hardly starts a motor. Common practice, no source. */
const farLowPercent = 14;
/** Share of the rating below which nothing is left. Common practice, no source. */
const emptyShare = 0.1;

/** F; no run capacitor is rated below. Common practice, no source. */
const leastF = 1.2e-6;

interface Measured {
  readonly farad: number;
  readonly how: string;
  readonly subject: string;
}

/** A run capacitor against its label, by the meter or under load. */
export const capacitor: Check = {
  name: "capacitor",
  signs: ["capacitor:good", "capacitor:weak", "capacitor:low", "capacitor:high", "capacitor:open"],
  judge: (scene) => {
    const rated = ratingsIn(scene);
    const measured = measuredIn(scene).map((one, at) => judgeOne(one, ratingFor(one, rated, at)));
    return measured.length > 0 ? measured : told(scene, "capacitor");
  },
};

interface Rating {
  readonly farad: number;
  readonly subject: string;
}

function ratingsIn(scene: Scene): Rating[] {
  const said = ofQuantity(scene.ratings, "capacitance").flatMap((one) => {
    const farad = numberOf(one);
    return farad === undefined ? [] : [{ farad, subject: one.subject ?? "" }];
  });
  return said.length > 0 ? said : labelSizes(scene);
}

/** "45/5" on a can, or "35 uF": sizes of the label that are no readings, microfarads. */
function labelSizes(scene: Scene): Rating[] {
  const sizes = scene.notes.flatMap((note) => note.statements).filter(isSize);
  for (const one of sizes) {
    const [, first, second] =
      /(\d+(?:\.\d+)?)\s*(?:\/|\+|and)\s*(\d+(?:\.\d+)?)/.exec(one.said) ?? [];
    const near = /\bcap|\bcan\b|dual|run|mfd|uf\b|microfarad/i.test(scene.words);
    if (near && first !== undefined && second !== undefined)
      return [
        { farad: Number(first) * 1e-6, subject: "" },
        { farad: Number(second) * 1e-6, subject: "" },
      ];
  }
  return [];
}

function isSize(one: Statement): boolean {
  return one.kind === "note" && one.about === "size";
}

function measuredIn(scene: Scene): Measured[] {
  const byMeter = ofQuantity(scene.readings, "capacitance").flatMap((one) => {
    if (one.over_range === true) return [];
    const farad = numberOf(one);
    return farad === undefined ? [] : [{ farad, how: "by the meter", subject: one.subject ?? "" }];
  });
  return byMeter.length > 0 ? byMeter : underLoad(scene);
}

/** One current through and one voltage across a capacitor, said together. */
function underLoad(scene: Scene): Measured[] {
  const amps = ofQuantity(scene.readings, "current").filter((one) => isOfCapacitor(one, scene));
  return amps.flatMap((one) => {
    const volts = ofQuantity(scene.readings, "voltage").filter(
      (other) => noteOf(scene, other) === noteOf(scene, one) && other.kind !== "dc",
    );
    const across = Math.max(...volts.flatMap((other) => numberOf(other) ?? []));
    const current = numberOf(one);
    const hertz = numberOf(ofQuantity(scene.readings, "frequency")[0] ?? one);
    const isHertz = ofQuantity(scene.readings, "frequency").length > 0;
    if (current === undefined || !Number.isFinite(across)) return [];
    const farad = capacitanceUnderLoadF(current, across, isHertz ? (hertz ?? usualHz) : usualHz);
    if (farad === undefined) return [];
    const how = `under load, ${plain(current)} A at ${plain(across)} V`;
    return [{ farad, how, subject: one.subject ?? "" }];
  });
}

function isOfCapacitor(reading: Reading, scene: Scene): boolean {
  if (reading.subject !== undefined && /cap/i.test(reading.subject)) return true;
  const words = noteWords(scene, reading);
  return /\bcap\b|capacitor|across the can|start (?:winding|lead|wire)|mfd|microfarad|\buf\b/.test(
    words,
  );
}

/** The rating of the same side of the can, else the nearest, else the one in the same place. */
function ratingFor(one: Measured, rated: readonly Rating[], at: number): number | undefined {
  const same = rated.find((other) => one.subject !== "" && other.subject === one.subject);
  if (same !== undefined) return same.farad;
  if (rated.length <= 1) return rated[0]?.farad;
  const inPlace = rated[at];
  if (inPlace !== undefined && one.farad < 1.3 * inPlace.farad) return inPlace.farad;
  const distance = (other: Rating) => Math.abs(Math.log(other.farad / Math.max(one.farad, 1e-9)));
  return [...rated].sort((a, b) => distance(a) - distance(b))[0]?.farad;
}

function judgeOne(measured: Measured, ratedF: number | undefined): Finding {
  const about = measured.subject === "" ? "capacitor" : measured.subject;
  const reads = `${microfaradWords(measured.farad)} ${measured.how}`;
  const error = ratedF === undefined ? undefined : capacitanceErrorPercent(measured.farad, ratedF);
  const base = {
    about,
    check: "capacitor",
    basis: "label, 6 percent",
    source:
      "label tolerance, 6 percent where none is said (common on run capacitors); under load C = I/(2 pi f V)",
  } as const;
  if (ratedF === undefined && measured.farad < leastF)
    return {
      ...base,
      level: "bad",
      brief: "hardly anything left",
      says: `${reads}: no run capacitor is that small, hardly anything is left`,
      values: { capacitance_F: measured.farad },
      signs: ["capacitor:open"],
    };
  if (ratedF === undefined || error === undefined)
    return {
      ...base,
      level: "unknown",
      says: `${reads}: no rating known`,
      values: { capacitance_F: measured.farad },
      missing: "the rating on the can",
    };
  const verdict = verdictOf(error, measured.farad / ratedF);
  return {
    ...base,
    level: verdict.level,
    brief: `${plain(error)} percent, ${verdict.says}`,
    says: `${reads} against ${microfaradWords(ratedF)}, ${plain(error)} percent: ${verdict.says}`,
    values: { capacitance_F: measured.farad, capacitance_error_percent: error },
    signs: [verdict.sign],
  };
}

function verdictOf(
  error: number,
  share: number,
): Pick<Finding, "level" | "says"> & { sign: string } {
  if (share < emptyShare) return { level: "bad", says: "open or empty", sign: "capacitor:open" };
  if (error < -runTolerancePercent)
    return {
      level: "bad",
      says: "below its tolerance",
      sign: error < -farLowPercent ? "capacitor:low" : "capacitor:weak",
    };
  if (error > runTolerancePercent)
    return {
      level: "watch",
      says: "above its tolerance, read the label again",
      sign: "capacitor:high",
    };
  return { level: "good", says: "within its tolerance", sign: "capacitor:good" };
}
