import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind, wordsFrom } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { gaugeFarOver, lineF, within } from "./line-range.ts";

/** psi of one side's gauge beside its line, where neither has a unit. Common practice, no source. */
const gaugePsi = { suction: [1, 260], liquid: [60, 620] } as const;

type Side = keyof typeof gaugePsi;

function sideOf(draft: Draft): Side | undefined {
  return draft.place === "suction" || draft.place === "liquid" ? draft.place : undefined;
}

function isFree(draft: Draft): boolean {
  return (
    (draft.named === undefined || draft.named === "pressure" || draft.named === "temperature") &&
    draft.points === undefined &&
    draft.rating === undefined &&
    draft.action === undefined &&
    !draft.over
  );
}

function asPair(pressure: Draft, line: Draft, side: Side): void {
  [pressure.settled, line.settled] = [true, true];
  pressure.named = "pressure";
  pressure.hint = undefined;
  pressure.place = side;
  line.named = "temperature";
  line.hint = "temperature";
  line.place = side;
}

const ends = /^(?:hz|amps?|volts?|rpm|percent|hours?|am|pm)$/;

const ofTwo = /^(?:both|each|circuits|ckts|comps|compressors|respectively|stages?|units?|rtus)$/;

/** Shares between which two figures may be two of a kind. Our choice, no source. */
const alikeTwo = { from: 0.85, to: 1.15 } as const;

/** "liquid 262 and 84": joined as two of a kind would be, and too far apart for that. */
function joinedLine(left: Draft, right: Draft, items: readonly Item[]): boolean {
  if (!/^(?:and|&)$/.test(items[left.index + 1]?.text ?? "")) return false;
  if (left.series !== undefined || right.series !== undefined) return false;
  const next0 = items[right.index + 1];
  // "suction 63 psi and 51", not "suction 118 psi and 115": one of both has its unit, and they are no two of a kind
  const own = left.ownUnit && left.unit?.dimension === "pressure" && right.unit === undefined;
  const ends = next0 === undefined || next0.kind === itemKind.line || next0.kind === itemKind.sign;
  const apart = right.value < alikeTwo.from * left.value || right.value > alikeTwo.to * left.value;
  if (left.value < gaugeFarOver * right.value && !(own && ends && apart)) return false;
  const next = items[right.index + 1];
  // "and 37 something": nobody knows of what
  if (next?.kind === itemKind.word && next.roles === 0 && next.label === undefined) return false;
  return !items.some(({ text }) => ofTwo.test(text));
}

/** "… liquid 340 and 96": behind one side's two figures the other side's two. */
function otherSide(items: readonly Item[], at: number, side: Side): boolean {
  const [name, first, joint, second] = items.slice(at, at + 4);
  if (name?.label?.place === side || !/^(?:and|&|at)$/.test(joint?.text ?? "")) return false;
  return first?.kind === itemKind.number && second?.kind === itemKind.number;
}

/** "suction 74 at 53", "liquid 252 psi at 86": one side's gauge, then how warm its line is. */
function thenLine(left: Draft, right: Draft, items: readonly Item[]): boolean {
  const side = sideOf(left);
  const joined = items[left.index + 1]?.text === "at" || joinedLine(left, right, items);
  if (side === undefined || !joined) return false;
  if (right.index !== left.index + 2 || !isFree(left) || !isFree(right)) return false;
  if (left.unit !== undefined && left.unit.dimension !== "pressure") return false;
  if (right.unit !== undefined && right.unit.dimension !== "temperature") return false;
  if (right.place !== undefined && right.place !== side) return false;
  const next = items[right.index + 1];
  if (next !== undefined && next.kind !== itemKind.sign && next.kind !== itemKind.line) {
    if (ends.test(next.text)) return false;
    if (next.label?.place !== undefined && !otherSide(items, right.index + 1, side)) return false;
  }
  if (left.unit === undefined && !within(left.value, gaugePsi[side])) return false;
  if (right.unit === undefined && !within(right.value, lineF[side])) return false;
  if (side === "liquid" && left.unit === undefined && left.value < right.value) return false;
  asPair(left, right, side);
  return true;
}

/** What may stand between a gauge's figure and its comma: its name, or where it was read; a place that the dictionary knows shows by its first word. */
const whereRead =
  /^(?:(?:suction|low|suct|psig?|lbs?|pounds) )?(?:(?:at|by|off|leaving)(?: (?:the )?(?:coil|evap\w*|case|comp\w*|valve|port|header)(?: out\w*)?)? )?,$/;

/** "suction 38, line 52", "72 suction, 54 on the line": the line behind a gauge's comma is that gauge's own. */
function commaLine(left: Draft, right: Draft, items: readonly Item[]): boolean {
  const gauged = left.place === "evaporator_out" && left.unit?.dimension === "pressure";
  if ((left.place !== "suction" && !gauged) || !isFree(left)) return false;
  if (left.unit !== undefined && left.unit.dimension !== "pressure") return false;
  if (right.ownUnit || !isFree(right)) return false;
  const gap = wordsFrom(items, left.index + 1, right.index);
  const behind = wordsFrom(items, right.index + 1, right.index + 4);
  const ahead = gap === ", line";
  if (!ahead && !(whereRead.test(gap) && /^on the (?:suction )?(?:line|pipe)\b/.test(behind)))
    return false;
  right.unit = undefined;
  if (left.unit !== undefined) {
    asPair(left, right, "suction");
    return true;
  }
  if (!within(left.value, gaugePsi.suction) || !within(right.value, lineF.suction)) return false;
  asPair(left, right, "suction");
  return true;
}

/** Share by which a gauge stands over its line where neither has a unit: two lines are nearer. Common practice, no source. */
const gaugeOverLine = 1.2;

const pipes: Readonly<Record<string, Side>> = {
  big: "suction",
  fat: "suction",
  large: "suction",
  small: "liquid",
  little: "liquid",
  skinny: "liquid",
};

/** "on the small one", where pipes were spoken of: told by its size. */
function sideBySize(draft: Draft, items: readonly Item[]): Side | undefined {
  const behind = wordsFrom(items, draft.index + 1, draft.index + 5);
  const size =
    /^(?:on|at|of) (?:the )?(big|fat|large|small|little|skinny) (?:one|pipe|line|tube)\b/;
  const named = size.exec(behind)?.[1];
  const spoken = items.some(({ label }) => label?.place === "suction" || label?.place === "liquid");
  return named === undefined || !spoken ? undefined : pipes[named];
}

/** "low side 27, suction 39": a side has one pressure, so the second is how warm its line is. */
function lowThenSuction(left: Draft, right: Draft, items: readonly Item[]): boolean {
  const led = (draft: Draft, word: RegExp): boolean =>
    draft.before.some((index) => word.test(items[index]?.text ?? ""));
  if (left.place !== "suction" || right.place !== "suction") return false;
  if (!led(left, /^low/) || !led(right, /^(?:suction|suct)$/)) return false;
  if (!isFree(left) || !isFree(right) || right.named === "pressure") return false;
  if (left.unit !== undefined && left.unit.dimension !== "pressure") return false;
  if (right.unit !== undefined && right.unit.dimension !== "temperature") return false;
  if (!within(right.value, lineF.suction)) return false;
  asPair(left, right, "suction");
  return true;
}

/** "suction out of the coil 30": how warm the line is where it leaves, no pressure. */
export function coilOutlets(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    const before = items.slice(Math.max(0, draft.index - 4), draft.index);
    const words = before.map(({ text }) => text).join(" ");
    const suction = /\bsuction (?:out(?: of)?|leaving|off) (?:the )?(?:coil|evap\w*|case)$/.test(
      words,
    );
    // "receiver outlet 96", not "closed the receiver outlet and it stalls at 18"
    const receiver = /\b(?:receiver out(?:let)?|(?:out of|leaving|off) the receiver)$/.test(words);
    if (!suction && !receiver) continue;
    if (!isFree(draft) || (draft.unit !== undefined && draft.unit.dimension !== "temperature"))
      continue;
    draft.named = "temperature";
    draft.hint = "temperature";
    draft.place = suction ? "evaporator_out" : "liquid";
  }
}

/** "301 and 98 F liquid", "127 and 52 on the vapor line": both figures, then whose they are. */
function bothThenSide(left: Draft, right: Draft, items: readonly Item[]): boolean {
  const bySize = sideBySize(right, items);
  const side = bySize ?? sideOf(right);
  const gauged = left.ownUnit && left.unit?.dimension === "pressure";
  const joint = items[left.index + 1]?.text ?? "";
  // "92 psi with 61 on the suction", "112 psi at 50 on the suction"
  const tied = gauged && /^(?:with|at|@)$/.test(joint) && right.unit === undefined;
  if (side === undefined || !(tied || /^(?:and|&|\/|,)$/.test(joint))) return false;
  if (right.index !== left.index + 2 || !isFree(left) || !isFree(right)) return false;
  if (left.unit !== undefined && left.unit.dimension !== "pressure") return false;
  const free = bySize !== undefined || left.place === undefined || left.place === "outdoor_air";
  if (!free && left.place !== side) return false;
  if (right.unit === undefined && !tied && !isBarePair(left, right, items, side)) return false;
  if (right.unit !== undefined && right.unit.dimension !== "temperature") return false;
  const behind = right.behind.some((index) => items[index]?.label?.place === side);
  if ((!behind && bySize === undefined) || !within(left.value, gaugePsi[side])) return false;
  asPair(left, right, side);
  return true;
}

/** Two bare figures of one line: gauge and warmth where their sizes say so, and "and" joins them. */
function isBarePair(left: Draft, right: Draft, items: readonly Item[], side: Side): boolean {
  if (left.unit !== undefined) return within(right.value, lineF[side]);
  const joint = items[left.index + 1]?.text ?? "";
  // behind a comma only what is no warmth of its own
  const joined = /^(?:and|&)$/.test(joint) || (joint === "," && isBareGauge(left));
  if (!joined) return false;
  return left.value >= gaugeOverLine * right.value && within(right.value, lineF[side]);
}

/** F; nothing that air or a line is read at is warmer. Common practice, no source. */
const warmestF = 165;

function isBareGauge(draft: Draft): boolean {
  const bare = draft.place === undefined && draft.hint === undefined && draft.before.length === 0;
  return bare && draft.value > warmestF;
}

/** "41 psig and 18 F out of the coil": of the low side, by the gauge before it. */
function outOfCoil(left: Draft, right: Draft, items: readonly Item[]): boolean {
  if (!/^(?:and|&|,)$/.test(items[left.index + 1]?.text ?? "")) return false;
  if (right.index !== left.index + 2 || left.unit?.dimension !== "pressure") return false;
  const bare = right.unit === undefined && left.ownUnit && isFree(right);
  if (!bare && right.unit?.dimension !== "temperature") return false;
  if ((left.place !== undefined && left.place !== "suction") || left.rating !== undefined)
    return false;
  const behind = wordsFrom(items, right.index + 1, right.index + 6);
  if (!/^(?:coming |going )?(?:out(?: of)?|leaving|off) (?:the )?(?:coil|evap)/.test(behind))
    return false;
  asPair(left, right, "suction");
  right.place = "evaporator_out";
  return true;
}

/** "condenser out 99 F at 326 psi": the line first, then what stands in it. */
function lineThenPressure(left: Draft, right: Draft, items: readonly Item[]): boolean {
  if (right.index !== left.index + 2 || items[left.index + 1]?.text !== "at") return false;
  if (right.unit?.dimension !== "pressure" || right.place !== undefined) return false;
  const warm = left.unit?.dimension === "temperature" || left.hint === "temperature";
  const coil = left.place === "evaporator_out" ? "suction" : undefined;
  const side = left.place === "condenser_out" ? "liquid" : (coil ?? sideOf(left));
  if (!warm || side === undefined) return false;
  right.place = side;
  return true;
}

/** "liquid 90 at 176": liquid is never under so little pressure as it is warm in F, so the line was told first. */
function turnedLiquid(left: Draft, right: Draft, items: readonly Item[]): boolean {
  if (right.index !== left.index + 2 || !/^(?:at|@)$/.test(items[left.index + 1]?.text ?? ""))
    return false;
  if (sideOf(left) !== "liquid" || (right.place !== undefined && right.place !== "liquid"))
    return false;
  if (![left, right].every((one) => isFree(one) && one.unit === undefined)) return false;
  if (right.value < gaugeOverLine * left.value || !within(left.value, lineF.liquid)) return false;
  if (!within(right.value, gaugePsi.liquid)) return false;
  const next = items[right.index + 1];
  if (next !== undefined && next.kind !== itemKind.sign && next.kind !== itemKind.line)
    return false;
  asPair(right, left, "liquid");
  return true;
}

/** bar of one side's gauge and degrees Celsius of its line, where neither has a unit. Common practice, no source. */
const gaugeBar = { suction: [0.5, 14], liquid: [6, 45] } as const;
const lineC = { suction: [-40, 35], liquid: [5, 65] } as const;

/** "suction 8.1 and 9, liquid 25 and 37": in a metric house bars are no larger than degrees, so both sides must be told alike. */
function metricPair(left: Draft, right: Draft, items: readonly Item[], first: boolean): boolean {
  const side = sideOf(left);
  if (side === undefined || right.index !== left.index + 2) return false;
  if (!/^(?:and|&|at|@)$/.test(items[left.index + 1]?.text ?? "")) return false;
  if (!isFree(left) || !isFree(right) || left.unit !== undefined || right.unit !== undefined)
    return false;
  const comma = items[right.index + 1]?.text === "," ? 2 : 1;
  if (first && !otherSide(items, right.index + comma, side)) return false;
  if (!within(left.value, gaugeBar[side]) || !within(right.value, lineC[side])) return false;
  asPair(left, right, side);
  left.unit = unitCalled("bar");
  left.assumedUnit = true;
  return true;
}

/** One side's pressure and its line's temperature in one breath. */
export function pressureAndLine(
  list: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  let metric = 0;
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined) return;
    if (units === "si" && metricPair(left, right, items, metric === 0)) {
      metric++;
      return;
    }
    const paired =
      thenLine(left, right, items) ||
      lowThenSuction(left, right, items) ||
      bothThenSide(left, right, items) ||
      commaLine(left, right, items) ||
      outOfCoil(left, right, items) ||
      (units === "us" && turnedLiquid(left, right, items)) ||
      lineThenPressure(left, right, items);
    if (!paired) return;
    for (const draft of [left, right])
      if (draft.unit === undefined && draft.named === "pressure") {
        draft.unit = unitCalled("psi");
        draft.assumedUnit = true;
      }
  });
}
