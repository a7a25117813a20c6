import type { Unit } from "../quantities/quantity.ts";
import { itemKind } from "./item.ts";
import type { Building } from "./items.ts";
import { unitCalled } from "./kinds.ts";
import { letterBehind, looseGrams, looseOunces, tellsApart } from "./loose-weight.ts";
import { numberAt } from "./numbers.ts";
import { outBehind } from "./out-behind.ts";
import { phraseAt } from "./phrase.ts";
import { spacedPair } from "./spaced-pair.ts";
import { atMainValve, isDeed } from "./terminal-or-unit.ts";
import { testAhead } from "./test-ahead.ts";
import { testTold } from "./test-told.ts";
import { type Token, tokenKind } from "./token.ts";
import {
  drawsAmps,
  factorAhead,
  gaugeAhead,
  heatBehind,
  isArticle,
  isWith,
  letterAhead,
  ofTransformer,
  pointAhead,
  rowOfOutputs,
  statAhead,
  terminalAhead,
  thinks,
  thousandsOf,
} from "./unit-or-word.ts";
import { isVolts } from "./volts-to-ground.ts";

/** A unit behind a number, with what a smaller unit adds: "7 lb 2 oz" is 7 + 2/16 lb. */
export interface UnitSaid {
  readonly unit: Unit;
  readonly end: number;
  readonly heard: boolean;
  readonly beside: boolean;
  /** in units of `unit` */
  readonly add: number;
}

const tester = /^(?:tester|test|megger|meter|setting|range|scale|insulation|dc)$/;
const sequences: readonly string[] = ["abc", "uvw", "csr"];

/** "U .51 V .52": a letter that follows the last point in its family is a point, not a unit. */
function nextPoint(build: Building, letter: string): boolean {
  for (const letters of sequences) {
    if (!build.family.startsWith(letters)) continue;
    const last = build.family.charAt(3);
    const at = letters.indexOf(letter);
    if (at >= 0 && letter !== last) return true;
  }
  return false;
}

/** May a one-letter unit stand apart from its number here? */
function standsApart(build: Building, token: Token, i: number): boolean {
  if (token.text.length > 1 && token.text !== "in") return true;
  const next = build.tokens[i + 1];
  if (token.text === "in") return inchHere(build, i);
  // "18.2 #2 18.4": the number of the next, no pounds
  if (token.text === "#" && next?.kind === tokenKind.number && next.glued) return false;
  if (token.kind === tokenKind.sign)
    return token.text === '"' || token.text === "%" || token.text === "°" || token.text === "#";
  if (
    next?.kind === tokenKind.sign &&
    next.text === "-" &&
    next.glued &&
    build.tokens[i + 2]?.glued === true
  )
    return false;
  if (isArticle(build, i)) return false;
  if (token.text === "d" || token.text === "t") return false;
  if (next?.text === "phase" || next?.text === "leg") return false;
  if (spacedPair(build.tokens, i)) return false;
  // "19 K to ground": no point is called K or M
  const end = next?.text === "to" && !/^[km]$/.test(token.text) ? build.tokens[i + 2] : undefined;
  if (/^[a-gnrsuvw]$|^g/.test(end?.text ?? "") && !isVolts(build, i)) return false;
  // "U 120 M V 118 M W 90 M, 500 V tester"
  const set = /^(?:250|500|1000|2500|5000)$/.test(build.tokens[i - 1]?.text ?? "");
  const colon = next?.text === ":" && tester.test(build.tokens[i - 2]?.text ?? "");
  if (token.text === "v" && set && (endsThought(next) || colon || tester.test(next?.text ?? "")))
    return true;
  const row = endsThought(next) || (next?.text === "to" && build.tokens[i + 2]?.text === "neutral");
  if (token.text === "v" && row && (closesRow(build) || closesStrokes(build, i))) return true;
  return !nextPoint(build, token.text);
}

/** "U V W 132 133 131 V": as many values as points, and the unit behind the last. */
function closesRow(build: Building): boolean {
  let values = 1;
  let at = build.items.length - 1;
  while (build.items[at]?.kind === itemKind.number && build.items[at]?.unit === undefined) {
    values++;
    at--;
  }
  return values > 1 && build.items[at]?.points?.length === values;
}

/** "U 118 V 262 W 625 Mohm, 398/400/399 V": behind a stroked row, or all three told, and a comma. */
function closesStrokes({ tokens, family }: Building, i: number): boolean {
  const lead = tokens[i - 2];
  // "U 4,8 V 4,9 W 4,8, 388 390 388 V"
  const bare = lead?.kind === tokenKind.number && lead.value >= 180;
  if (lead?.text === "/" || (bare && family === "uvww")) return true;
  const parted = lead?.kind === tokenKind.line || /^[,.;]$/.test(lead?.text ?? "");
  return parted && family === "uvww";
}

function endsThought(next: Token | undefined): boolean {
  return (
    next === undefined ||
    next.kind === tokenKind.line ||
    (next.kind === tokenKind.sign && /^[,.;!)]$/.test(next.text))
  );
}

/** "0.55 in" ends a thought; "3 in still flashing" does not speak of inches. */
function inchHere(build: Building, i: number): boolean {
  if (build.items.slice(-3).some((item) => item.label?.action !== undefined)) return false;
  // "chilled water 7.4 out 12.1 in": its other side
  if (build.items[build.items.length - 1]?.text === "out" || outBehind(build, i)) return false;
  const measured = build.items.some(
    (item) =>
      item.label?.quantity === "static_pressure" ||
      item.label?.quantity === "length" ||
      item.label?.quantity === "vacuum" ||
      item.unit?.dimension === "inches_of_water",
  );
  if (!measured && !(build.tokens[i - 1]?.text ?? "").includes(".")) return false;
  const next = build.tokens[i + 1];
  if (next !== undefined && (next.kind === tokenKind.number || next.word?.number !== undefined))
    return false;
  return (
    next === undefined ||
    // "7.1 in at the inlet"
    next.text === "at" ||
    next.kind !== tokenKind.word ||
    phraseAt(build.tokens, i)?.end !== i + 1
  );
}

/** "ST 50 HP 365": behind a gauge's value HP is the next gauge. */
function gaugeBefore(build: Building): boolean {
  const item = build.items[build.items.length - 1];
  const label = item?.label;
  if (label === undefined || item?.text === "sp") return label !== undefined;
  return label.rating === undefined && (label.place ?? label.hint) !== undefined;
}

/** "bar(a)", "kPa(g)" */
function referenced(build: Building, i: number, unit: Unit): Unit | undefined {
  const [open, letter, close] = [build.tokens[i], build.tokens[i + 1], build.tokens[i + 2]];
  if (unit.dimension !== "pressure" || open?.text !== "(" || close?.text !== ")") return undefined;
  if (letter?.text === "a" || letter?.text === "abs") return { ...unit, reference: "absolute" };
  return letter?.text === "g" ? { ...unit, reference: "gauge" } : undefined;
}

/** MW is not mW, and "mohm" may be milli: the typed capital tells. */
function byCase(build: Building, i: number, unit: Unit): Unit | undefined {
  const token = build.tokens[i];
  if (token?.text === "m" && token.apostrophe && drawsAmps(build)) return unitCalled("A");
  const capital = token !== undefined && build.typed.charAt(token.from) === "M";
  if (token?.text === "mw" && capital) return unitCalled("MW");
  if ((token?.text === "mohm" || token?.text === "mohms" || token?.text === "mω") && !capital)
    return unit.figure === "megohm" ? unitCalled("milliohm") : undefined;
  return undefined;
}

export function plainUnitAt(build: Building, i: number): UnitSaid | undefined {
  let at = i;
  const { tokens } = build;
  const joint = tokens[at];
  if (
    joint?.kind === tokenKind.sign &&
    (joint.text === "-" || joint.text === "(" || joint.text === "[")
  ) {
    const next = tokens[at + 1];
    if (next?.glued !== true || next.kind !== tokenKind.word || next.text.length < 2)
      return undefined;
    if (joint.text === "-" && !joint.glued) return undefined;
    at++;
  }
  const token = tokens[at];
  if (token === undefined) return undefined;
  const phrase = phraseAt(tokens, at);
  const unit = phrase?.word.unit;
  if (phrase === undefined || unit === undefined) return undefined;
  // "u 38k v 41k w 39k": no kilovolts
  const kilohm =
    unit.figure === "kV" && rowOfOutputs(build, at + 1) ? unitCalled("kilohm") : undefined;
  const mains = atMainValve(build, at) ? unitCalled("V") : undefined;
  const other = kilohm ?? mains;
  if (other !== undefined) return { unit: other, end: at + 1, heard: false, beside: false, add: 0 };
  // "first winding's 2.2 second's 2.3": the second of them
  if (token.apostrophe && token.text === "second") return undefined;
  // "27 w-c": a terminal and its common
  if (
    token.text.length === 1 &&
    !token.glued &&
    tokens[at + 1]?.text === "-" &&
    phrase.end > at + 1
  )
    return undefined;
  if (thousandsOf(build, at) || letterAhead(build, at) || factorAhead(build, at, unit))
    return undefined;
  if (testAhead(build, at)) return undefined;
  if (pointAhead(build, at, unit) || statAhead(build, at) || gaugeAhead(build, at))
    return undefined;
  if (unit.figure === "s" && token.text === "sec" && ofTransformer(build, at)) return undefined;
  if ((unit.figure === "W" && isWith(build, at)) || terminalAhead(build, at)) return undefined;
  if (testTold(build, at) > 0 || thinks(build, at) || isDeed(build, at)) return undefined;
  // "24.1 w/ y called": with
  if (unit.figure === "W" && token.text === "w" && tokens[at + 1]?.text === "/") return undefined;
  if (phrase.word.beside && !token.glued && phrase.end === at + 1 && !standsApart(build, token, at))
    return undefined;
  if (
    unit.figure === "hp" &&
    !token.glued &&
    tokens[phrase.end]?.kind === tokenKind.number &&
    gaugeBefore(build)
  )
    return undefined;
  if (
    (unit.dimension === "length" || unit.figure === "in wc") &&
    tokens[phrase.end]?.text === "/" &&
    tokens[phrase.end]?.glued === true &&
    tokens[phrase.end + 1]?.glued === true
  )
    return undefined;
  // "14 K superheat", "9K of subcooling"
  if (unit.figure === "kilohm" && token.text === "k" && heatBehind(build, phrase.end)) {
    const kelvin = unitCalled("K");
    if (kelvin !== undefined)
      return { unit: kelvin, end: phrase.end, heard: false, beside: false, add: 0 };
  }
  const cased = byCase(build, at, unit);
  if (cased !== undefined)
    return { unit: cased, end: phrase.end, heard: false, beside: false, add: 0 };
  if (
    token.text === "#" &&
    (tokens[at - 1]?.text.length ?? 0) >= 4 &&
    !(tokens[at - 1]?.text ?? "").includes(".")
  )
    return undefined;
  if (token.text === "'" && tokens[at + 1]?.glued === true) return undefined;
  const marked = referenced(build, phrase.end, unit);
  if (marked !== undefined)
    return { unit: marked, end: phrase.end + 3, heard: false, beside: false, add: 0 };
  return { unit, end: phrase.end, heard: phrase.word.heard, beside: phrase.word.beside, add: 0 };
}

/** "and a half" behind the unit: "a pound and a half". */
function halfBehind(build: Building, said: UnitSaid): UnitSaid {
  const { tokens } = build;
  if (tokens[said.end]?.text !== "and") return said;
  const half = tokens[said.end + 1]?.text === "a" ? said.end + 2 : said.end + 1;
  const word = tokens[half]?.word?.number;
  if (word?.kind === "half" && (unitAt(build, half + 1)?.beside ?? true))
    return { ...said, end: half + 1, add: 0.5 };
  if (word?.kind === "part" && word.value === 4 && tokens[half - 1]?.text === "a")
    return { ...said, end: half + 1, add: 0.25 };
  // "a pound and three quarters"
  const part = tokens[half + 1]?.word?.number;
  if (word?.kind === "ones" && word.value === 3 && part?.kind === "part" && part.value === 4)
    return { ...said, end: half + 2, add: 0.75 };
  return said;
}

/** "… 2 oz", "and eight hundred grams", "10 minutes": a smaller unit of the same kind adds up. */
function smaller(build: Building, said: UnitSaid): UnitSaid {
  const { dimension } = said.unit;
  if (dimension !== "mass" && dimension !== "time" && dimension !== "length") return said;
  let at = said.end;
  const joint = build.tokens[at]?.text;
  if (joint === "and" || joint === "n" || joint === "&" || joint === ",") at++;
  const number = numberAt(build.tokens, at);
  if (number === undefined || number.value < 0) return said;
  const next = plainUnitAt(build, number.end);
  const grams = next === undefined && at === said.end ? looseGrams(build, said, number) : 0;
  if (grams > 0) return { ...said, end: number.end, add: grams / 1000 };
  if (next === undefined && at === said.end && looseOunces(build, said, number))
    return { ...said, end: number.end, add: number.value / 16 };
  if (joint === "," && next !== undefined && tellsApart(build.tokens[next.end])) return said;
  const letter = next === undefined ? 0 : letterBehind(said.unit.figure, next.unit.figure);
  if (next !== undefined && number.value < letter)
    return { ...said, end: next.end, add: number.value / letter };
  if (next === undefined || next.unit.dimension !== dimension) return said;
  const ratio = next.unit.factor / said.unit.factor;
  if (ratio >= 1 || number.value * ratio >= 1) return said;
  return { ...said, end: next.end, add: number.value * ratio };
}

/** The unit at token `i`, directly behind a number. */
export function unitAt(build: Building, i: number): UnitSaid | undefined {
  const said = plainUnitAt(build, i);
  if (said === undefined) return undefined;
  const half = halfBehind(build, said);
  return half === said ? smaller(build, said) : half;
}
