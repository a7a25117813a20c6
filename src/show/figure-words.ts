import type { Reading } from "../model.ts";
import { leadingZero } from "./wording.ts";

/** A figure as it was said: digits and unit, "84" and "megohm". */
export interface FigureWords {
  readonly number: string;
  readonly unit: string;
}

/** kg in a pound, exact by definition (NIST SP 811). */
const kgPerPound = 0.45359237;
const ouncesPerPound = 16;

const relationWords = {
  "=": "",
  "~": "about ",
  "<": "under ",
  "<=": "at most ",
  ">": "over ",
  ">=": "at least ",
  in: "",
} as const satisfies Record<Reading["relation"], string>;

/** A reading's figure in the technician's own digits, with what he said of it: "over 550", "80 to 90". */
export function figureWords(reading: Reading): FigureWords {
  if (reading.over_range === true) return { number: overRangeWord(reading.said), unit: "" };
  const { number, unit } = { ...reading.figure, number: leadingZero(reading.figure.number) };
  const before = relationWords[reading.relation];
  return { number: `${before}${numberWords(reading, number)}`, unit: unitWords(reading, unit) };
}

function numberWords(reading: Reading, number: string): string {
  const steps = seriesFigures(reading);
  if (steps !== undefined) return steps.join(", ");
  const upper = reading.relation === "in" ? upperFigure(reading, number) : undefined;
  if (upper !== undefined) return `${number} to ${upper}`;
  const weight = poundsAndOunces(reading);
  return weight === undefined ? number : `${weight.pounds} lb ${weight.ounces}`;
}

function unitWords(reading: Reading, unit: string): string {
  if (poundsAndOunces(reading) !== undefined) return "oz";
  const kind = reading.kind === undefined || unit.includes(reading.kind) ? "" : ` ${reading.kind}`;
  return reading.quantity === "voltage" ? `${unit}${kind}` : unit;
}

/** "7 lb 4 oz" is one weight; undefined where no ounces were said beside pounds. */
function poundsAndOunces({
  quantity,
  value,
  figure,
  said,
}: Reading): { readonly pounds: number; readonly ounces: number } | undefined {
  if (quantity !== "mass" || figure.unit !== "lb" || typeof value !== "number") return undefined;
  if (!/oz|ounce/i.test(said)) return undefined;
  const tenths = Math.round((value / kgPerPound) * ouncesPerPound * 10);
  const pounds = Math.floor(tenths / (ouncesPerPound * 10));
  return { pounds, ounces: (tenths - pounds * ouncesPerPound * 10) / 10 };
}

/** "OL" where he said OL, "open" where he said open. */
function overRangeWord(said: string): string {
  return /\b(OL|open|infinite|infinity|off scale|maxed)\b/i.exec(said)?.[0] ?? "over range";
}

const figurePattern = /-?\d*\.?\d+(?:,\d{3})*/g;

function figuresIn(said: string): readonly string[] {
  return [...said.matchAll(figurePattern)].map((m) => m[0]);
}

/** K in a degree of each scale, turned about: what a kelvin is in its degrees. */
const degreesPerKelvin: Readonly<Record<string, number>> = { F: 1.8, C: 1, K: 1 };

/** The upper end of a range in the unit of its lower end: said in words or behind a dash, it has no digits of its own. */
function upperFigure({ value, high, figure }: Reading, number: string): string | undefined {
  const low = Number(number);
  if (typeof value !== "number" || high === undefined || Number.isNaN(low)) return undefined;
  const scale = degreesPerKelvin[figure.unit] ?? (value === 0 ? undefined : low / value);
  if (scale === undefined) return undefined;
  return String(Number((low + scale * (high - value)).toPrecision(6)));
}

/** The figures of a series as they were said; undefined where the words don't hold just them. */
function seriesFigures(reading: Reading): readonly string[] | undefined {
  if (reading.series === undefined) return undefined;
  // the figure of "m3/h" is none
  const all = figuresIn(reading.said.replace(/(?<![a-z])m3(?![0-9])/gi, "m"));
  const end = all.lastIndexOf(reading.figure.number) + 1;
  const count = reading.series.length;
  // "38 down from 47": where it began was told last
  const backwards = count === 2 && all.length === 2 && all[0] === reading.figure.number;
  if (backwards && all[0] !== all[1]) return [...all].reverse();
  return end < count ? undefined : all.slice(end - count, end);
}
