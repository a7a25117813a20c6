import type { Finding, Reading } from "../../model.ts";
import {
  capacitanceErrorPercent,
  capacitanceUnderLoadF,
  runTolerancePercent,
} from "../../physics/capacitor.ts";
import type { Check } from "../check.ts";
import { digitPercentOf } from "../digit.ts";
import { beside, figureSpan, noteOf, noteWords } from "../near.ts";
import { numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { microfaradWords, percentWords, plain } from "../words.ts";
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
  readonly side: "fan" | "herm" | undefined;
  /** what a last digit is worth, percent */
  readonly digit: number;
}

/** A run capacitor against its label, by the meter or under load. */
export const capacitor: Check = {
  name: "capacitor",
  examples: [
    { level: "good", notes: ["run capacitor rated 45, reads 44.2 uF"] },
    { level: "bad", notes: ["run capacitor rated 45, reads 31.2 uF"] },
    { level: "unknown", notes: ["run capacitor reads 31.2 uF"] },
  ],
  signs: ["capacitor:good", "capacitor:weak", "capacitor:low", "capacitor:high", "capacitor:open"],
  judge: (scene) => {
    const rated = ratingsIn(scene);
    const measured = measuredIn(scene).map((one) => judgeOne(one, ratingFor(one, rated)));
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
  return said.length > 1 ? said : [...said, ...labelSizes(scene, said)];
}

/** "45/5", "forty five plus five" on a can: sizes of the label that are no readings, microfarads. */
function labelSizes(scene: Scene, said: readonly Rating[]): Rating[] {
  const read = scene.notes
    .flatMap(({ statements }) => statements)
    .flatMap((one) => (one.kind === "note" ? [/^size ([\d.]+)\/([\d.]+)$/.exec(one.about)] : []))
    .find((match) => match !== null);
  const near = /\bcap|\bcan\b|dual|run|mfd|uf\b|microfarad/.test(scene.words);
  const [, first, second] =
    read ?? /\b(\d{2}(?:\.\d)?) ?(?:\/|\+) ?(\d{1,2}(?:\.\d)?)\b/.exec(scene.words) ?? [];
  if (near && said.length === 0 && first === undefined) return labelFigure(scene);
  if (!near || first === undefined || second === undefined) return [];
  return [Number(first), Number(second)]
    .map((size) => ({ farad: size * 1e-6, subject: "" }))
    .filter((size) => !said.some((other) => Math.abs(other.farad - size.farad) < 1e-9));
}

/** "label says 30", "it's a 35": one rating in words. */
function labelFigure(scene: Scene): Rating[] {
  const said =
    /\b(?:label(?:ed)?|marked|rated(?: at)?|stamped|(?:label|can|it|cap) says|it'?s an?)(?: says)? (\d{1,2}(?:\.\d)?)\b(?! ?(?:a|amps?|v|volts?|hz|f|c)\b)/.exec(
      scene.words,
    )?.[1];
  return said === undefined ? [] : [{ farad: Number(said) * 1e-6, subject: "" }];
}

/** A half of a label that was taken for a reading: "45+5 mfd", or a slash before it and no reading before that. */
function isOfLabel(reading: Reading, scene: Scene): boolean {
  const note = noteOf(scene, reading);
  const text = note?.text ?? "";
  const [from, to] = figureSpan(text, reading);
  const at = from + Math.max(0, text.slice(from, to).indexOf(reading.figure.number));
  if (/^ ?\+ ?\d/.test(text.slice(at + reading.figure.number.length))) return true;
  const [, first, sign] = /([\d.]+) ?([/+]) ?$/.exec(text.slice(0, at)) ?? [];
  if (first === undefined || sign === "+") return sign === "+";
  const readFirst = note?.readings.some(
    (one) =>
      one.quantity === "capacitance" && one.rating === undefined && one.figure.number === first,
  );
  return readFirst !== true;
}

function measuredIn(scene: Scene): Measured[] {
  const byMeter = ofQuantity(scene.readings, "capacitance").flatMap((one) => {
    if (one.over_range === true || isOfPins(one) || isOfLabel(one, scene)) return [];
    const farad = numberOf(one);
    if (farad === undefined) return [];
    return [{ farad, how: "by the meter", ...ofSide(one, scene), digit: digitPercentOf([one]) }];
  });
  return byMeter.length > 0 ? byMeter : underLoad(scene);
}

/** F; between two pins less is a winding's ohms. Common practice, no source. */
const pinsF = 10e-6;

/** "C-R 0.6" in the breath of a capacitor: ohms of a winding. */
function isOfPins(reading: Reading): boolean {
  const points = reading.points ?? [];
  const pins = points.length === 2 && points.every((one) => ["C", "R", "S"].includes(one));
  return pins && (numberOf(reading) ?? 0) < pinsF;
}

/** One current through and one voltage across a capacitor, said together. */
function underLoad(scene: Scene): Measured[] {
  const near = ofQuantity(scene.readings, "current").filter((one) => isOfCapacitor(one, scene));
  const amps = near.filter((one) => !isOfMotor(one, near, scene));
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
    return [{ farad, how, ...ofSide(one, scene), digit: digitPercentOf([one]) }];
  });
}

/** "3.1 A in the start wire, 405 V over the cap, motor 2.9": the motor's own beside what flows through the capacitor. */
function isOfMotor(one: Reading, all: readonly Reading[], scene: Scene): boolean {
  const beside = all.filter((other) => noteOf(scene, other) === noteOf(scene, one));
  return (
    beside.length > 1 &&
    /\b(?:motor|common|line|run|total|running)\b/.test(clauseOf(one, scene)) &&
    !throughIt.test(clauseOf(one, scene)) &&
    beside.some((other) => throughIt.test(clauseOf(other, scene)))
  );
}

const throughIt = /\b(?:start|aux\w*|herm|cap\w*|through)\b/;

/** The words about a figure between its commas. */
function clauseOf(one: Reading, scene: Scene): string {
  const ahead =
    beside(scene, one, [clauseLetters, 0])
      .split(/[,;]|\. /)
      .at(-1) ?? "";
  const behind = beside(scene, one, [0, clauseLetters]).split(/[,;]|\. /)[0] ?? "";
  return `${ahead} ${behind}`;
}

/** Letters looked at on each side for its clause. */
const clauseLetters = 30;

function ofSide(one: Reading, scene: Scene): Pick<Measured, "subject" | "side"> {
  return { subject: one.subject ?? "", side: sideSaid(one, scene) };
}

/** The side of the can that the words right before a figure name. */
function sideSaid(reading: Reading, scene: Scene): "fan" | "herm" | undefined {
  const words = beside(scene, reading, [sideAhead, 0]);
  const last = [...words.matchAll(/\b(fan)\b|\b(herm|comp\w*)\b/g)].at(-1);
  if (last === undefined) return;
  return last[1] === undefined ? "herm" : "fan";
}

/** Letters before a figure that name its side. */
const sideAhead = 22;

function isOfCapacitor(reading: Reading, scene: Scene): boolean {
  if (reading.subject !== undefined && /cap/i.test(reading.subject)) return true;
  const words = noteWords(scene, reading);
  return /\bcap\b|capacitor|across the can|start (?:winding|lead|wire)|mfd|microfarad|\buf\b/.test(
    words,
  );
}

/** F; a fan's side of a can is rated below. Common practice, no source. */
const fanSideF = 16e-6;
/** A reading over a rating pairs worse than one under it. Common practice, no source. */
const overCosts = 4;

/** The rating of the same side of the can, else the one that a worn capacitor may come from. */
function ratingFor(one: Measured, rated: readonly Rating[]): number | undefined {
  const same = rated.find((other) => one.subject !== "" && other.subject === one.subject);
  if (same !== undefined) return same.farad;
  const sided = rated.filter((other) => one.side !== "fan" || other.farad < fanSideF);
  const fitting = one.side === "herm" ? largest(sided) : sided;
  const distance = (other: Rating) => {
    const off = Math.log(one.farad / other.farad);
    return off > 0.1 ? overCosts * off : Math.abs(off);
  };
  return [...fitting].sort((a, b) => distance(a) - distance(b))[0]?.farad;
}

function largest(rated: readonly Rating[]): Rating[] {
  return [...rated].sort((a, b) => b.farad - a.farad).slice(0, 1);
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
  const percent = percentWords(error, measured.digit);
  return {
    ...base,
    level: verdict.level,
    brief: `${percent} percent, ${verdict.says}`,
    says: `${reads} against ${microfaradWords(ratedF)}, ${percent} percent: ${verdict.says}`,
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
