import { type Item, itemKind } from "../item.ts";

/** The rule's name. */
export const SIZE = "<number> <size of a thing>";

export const sized: ReadonlySet<string> = new Set([
  "line",
  "lines",
  "pipe",
  "copper",
  "tube",
  "tubing",
  "drier",
  "dryer",
  "valve",
  "ell",
  "elbow",
  "elbows",
  "fitting",
  "flare",
  "nut",
  "coupling",
  "couplings",
  "hose",
  "hoses",
  "wrench",
  "bit",
  "socket",
  "screw",
  "screws",
  "bolt",
  "bolts",
  "filter",
  "filters",
  "belt",
  "belts",
  "wire",
  "cable",
  "conduit",
  "emt",
  "pvc",
  "imc",
  "rigid",
  "liquidtight",
  "raceway",
  "nipples",
  "awg",
  "gauge",
  "ga",
  "od",
  "id",
  "lineset",
  "insulation",
  "suction",
  "liquid",
  "allthread",
  "stub",
  "tee",
  "reducer",
  "sheave",
  "pulley",
  "bore",
  "shaft",
  "pitch",
  "blade",
  "wheel",
  "duct",
  "flex",
  "strut",
  "discharge",
  "port",
  "tap",
  "nipple",
  "union",
  "trap",
  "anchor",
  "rod",
  "hole",
  "driver",
  "nutdriver",
  "thick",
  "wide",
  "long",
  "tall",
  "deep",
  "ball",
  "solenoid",
  "strainer",
  "armaflex",
  "stick",
  "sticks",
]);
export const heights: ReadonlySet<string> = new Set([
  "ladder",
  "lift",
  "roof",
  "hatch",
  "extension",
  "cord",
  "crane",
  "scissor",
  "boom",
  "rope",
  "run",
  "away",
  "ceiling",
  "belt",
  "hose",
  "tall",
  "long",
  "high",
  "up",
  "wide",
  "deep",
  "thick",
  "stepladder",
  "chain",
  "scaffold",
  "tape",
  "parapet",
  "wall",
  "filters",
  "filter",
  "pipe",
  "cable",
  "wire",
]);
export const jugs: ReadonlySet<string> = new Set([
  "jug",
  "jugs",
  "drum",
  "drums",
  "cylinder",
  "cylinders",
  "tank",
  "tanks",
  "bottle",
  "bottles",
  "can",
  "cans",
  "bag",
  "bags",
  "cyl",
  "box",
  "dumbbell",
  "recovery",
]);
export const tons: ReadonlySet<string> = new Set([
  "ton",
  "tons",
  "tonner",
  "seer",
  "hp",
  "horse",
  "horsepower",
  "mbh",
  "phase",
  "ph",
  "btu",
  "gallon",
  "gallons",
  "gal",
  "percent",
  "speed",
  "wheel",
  "row",
  "mile",
  "miles",
  "mph",
  "yard",
  "story",
  "stories",
  "flights",
  "wheeler",
  "year",
  "years",
  "yr",
  "yrs",
  "months",
  "month",
  "volts",
  "degree",
  "inch",
  "inches",
  "way",
  "ohm",
  "flight",
  "turn",
  "turns",
  "size",
  "frame",
  "series",
  "mil",
  "ft",
  "cfh",
  "scfh",
]);

const areas = /^(?:m3|ft3|sqft|sf|cubic|m2|mm2)$/;
const volumes = /^(?:l|ltr|lit(?:er|re)s?|qts?|quarts?|pints?|gals?|gallons?)$/;

/** "1500 sqft", "2.5 l of oil": how large a room is, how much of what no gauge tells. */
export function isMeasure(item: Item | undefined, next: Item | undefined): boolean {
  if (item === undefined) return false;
  if (areas.test(item.text)) return true;
  // "230 L-N" is a line
  return (
    item.kind === itemKind.word &&
    volumes.test(item.text) &&
    !/^(?:-|\/|to)$/.test(next?.text ?? "")
  );
}

/** Grades of oil. Source: ISO 3448, from memory. */
const grades: ReadonlySet<number> = new Set([10, 15, 22, 32, 46, 55, 68, 100, 150, 170, 220, 320]);

/** "iso 32", no "iso 524 406 127 Mohm": a grade of oil, and not the first of what insulates. */
export function oilGrade(items: readonly Item[], i: number): boolean {
  if (items[i - 1]?.text !== "iso" || items[i - 1]?.label === undefined) return false;
  const tested = items.some(({ unit }) => unit?.dimension === "resistance");
  return grades.has(items[i]?.value ?? 0) && !tested;
}

/** A; sizes of miniature fuses that are no halves. Source: IEC 60127, from memory. */
const miniature: ReadonlySet<number> = new Set([0.315, 0.63, 0.8, 1.25, 1.6, 3.15, 6.3]);

/** Amps that a fuse or a breaker has for a size: halves, and the sizes of miniature fuses. */
export const isAmpsSize = (value: number): boolean =>
  value > 0 && (Number.isInteger(value * 2) || miniature.has(value));
