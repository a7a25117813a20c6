import type { UnitHabit } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, isOneWord, itemKind } from "./item.ts";
import { canonical } from "./make.ts";
import { ratio } from "./near-value.ts";
import { notMeasured } from "./not-measured.ts";
import { recast } from "./recast.ts";

/** Pa gauge; a head below it is no head's pressure, so nothing that a word alone can mean; common practice, no source. */
const leastHeadPa = 1e5;

/** bar that an oil's gauge shows at most. Common practice, no source. */
const mostOilBar = 18;

/** "comp 2 oil 48" behind compressor 1's 55 psi: what an oil near it was measured in before. */
function oilAgain(draft: Draft, { readings }: Context): boolean {
  if (draft.place !== "oil" || !draft.assumedUnit) return false;
  const old = readings.findLast(({ at, rating }) => at === "oil" && rating === undefined);
  const far = old === undefined ? Number.NaN : ratio(draft.value, old);
  // "comp 2 12" behind 28 net: a pump that is failing
  const least = draft.named === "pressure" && old?.quantity === "pressure" ? 0.1 : 0.5;
  if (old === undefined || !(far > least && far < 2)) return false;
  if (old.quantity === "temperature") recast(draft, "temperature", old.figure.unit);
  return old.quantity === draft.quantity && old.figure.unit === draft.unit?.figure;
}

/** F that the oil of a running machine has at least, and psi that its pump makes over the suction. Common practice, no source. */
const coldOil = 85;
const netOil: readonly [number, number] = [6, 70];

/** "suct 22 disch 195 oil 48": as much over the suction as an oil pump makes, and cold for an oil. */
function overSuction({ unit, value }: Draft, items: readonly Item[]): boolean {
  const at = items.findIndex(
    ({ label }) => label?.place === "suction" && label.hint === "pressure",
  );
  const suction = items[at + 1];
  if (at < 0 || suction?.kind !== itemKind.number || unit?.figure !== "psi") return false;
  const net = value - suction.value;
  return value < coldOil && net >= netOil[0] && net <= netOil[1];
}

/** "oil 110": a pressure or a temperature, as long as neither is said. */
function oilAlone(draft: Draft, items: readonly Item[]): void {
  if (draft.place !== "oil" || !draft.assumedUnit || draft.corrects) return;
  // "suct 34.5 disch 121 oil 88 psi" in rows: all of them gauges
  const gauges = items.some(({ unit }) => unit?.dimension === "pressure");
  if (gauges && !items.some(({ label }) => label?.hint === "temperature")) return;
  // "LP 3,1 HP 14,5 oil 6": in bars beside both gauges, and no oil of a machine that runs is as cold
  const sides = ["suction", "discharge"].every((side) =>
    items.some(({ label }) => label?.place === side && label.hint === "pressure"),
  );
  if (sides && draft.unit?.figure === "bar" && draft.value <= mostOilBar) return;
  if (overSuction(draft, items)) return;
  // "oil 49 discharge 96": no oil's gauge shows as many bars
  if (draft.unit?.figure === "bar" && draft.value > 1.4 * mostOilBar && draft.named === undefined) {
    recast(draft, "temperature", "C");
    return;
  }
  // "oil's at 135": so much is as often degrees; less is what a pump makes
  const bare = draft.quantity === "pressure" && draft.value >= 100 ? "oil's".length : "oil".length;
  const told = draft.before.some((index) => {
    const item = items[index];
    return item?.label?.place === "oil" && item.to - item.from > bare;
  });
  // "net oil 39", "oil 25 over suction": only pressures have a net
  const net = items.some(
    ({ text }, at) =>
      /^(?:net|diff|differential)$/.test(text) ||
      (/^(?:over|above)$/.test(text) && items[at + 1]?.label?.place === "suction"),
  );
  if (!told && !net) draft.question = "quantity";
}

/** bar that no discharge has but that of carbon dioxide, and C that hot gas has at most. Common practice, no source. */
const mostDischargeBar = 46;
const mostHotGas = 150;

/** "at 40 Hz discharge 66": in a metric house so many bars are degrees, where no carbon dioxide is spoken of. */
function hotGas(draft: Draft, items: readonly Item[]): void {
  const words = draft.before.map((index) => items[index]);
  const word = words.find((item) => item?.label?.place === "discharge");
  if (draft.quantity !== "pressure" || draft.place !== "discharge" || !draft.assumedUnit) return;
  if (word === undefined || !isOneWord(word) || !/^(?:disch|dis$|hot)/.test(word.text)) return;
  if (draft.named === "pressure" || draft.corrects) return;
  if (draft.value <= mostDischargeBar || draft.value > mostHotGas || draft.unit?.figure !== "bar")
    return;
  if (items.some(({ text }) => /^(?:co2|r744|744|transcritical|pressure)$/.test(text))) return;
  recast(draft, "temperature", "C");
}

/** "Discharge 180." alone: hot gas or its pressure, both are usual there; common practice, no source. */
function dischargeAlone(draft: Draft, items: readonly Item[], units: UnitHabit): void {
  if (units === "si") hotGas(draft, items);
  if (draft.quantity !== "pressure" || draft.place !== "discharge" || !draft.assumedUnit) return;
  const word =
    items.find(({ label, owner }) => owner === undefined && label?.place === "discharge")?.text ??
    "";
  // "hz 88 dsch 191": beside how fast the compressor turns, and no other gauge
  const fast = items.some(
    ({ unit, label }) => unit?.figure === "Hz" || label?.quantity === "frequency",
  );
  const gauges = items.filter(
    ({ label, owner }) =>
      owner === undefined && (label?.hint === "pressure" || label?.place === "suction"),
  );
  const alone =
    (items.every(({ kind }, i) => kind === itemKind.sign || i < 2) && items.length <= 3) ||
    (fast && gauges.length < 2);
  if (!alone || !/^disch/.test(word) || draft.corrects) return;
  const both = units === "us" ? draft.value >= 120 && draft.value <= 260 : draft.value >= 40;
  if (both) draft.question = "quantity";
}

/** "head 2 warm": an indoor unit by its number, not a pressure. */
function lowHead(draft: Draft, units: UnitHabit): void {
  if (draft.quantity !== "pressure" || draft.place !== "discharge" || draft.corrects) return;
  if (!draft.assumedUnit || draft.rating !== undefined || draft.over) return;
  if (canonical(draft, draft.value, units) < leastHeadPa) draft.question = "quantity";
}

/** "charged 5 into the walk-in": what was put in is a weight, whatever it was put into. */
function chargedInto(draft: Draft, items: readonly Item[]): void {
  if (draft.action === undefined || draft.quantity !== "temperature" || !draft.assumedUnit) return;
  const nearest = draft.before[draft.before.length - 1];
  if (nearest === undefined || items[nearest]?.label?.action === undefined) return;
  draft.quantity = undefined;
  draft.place = undefined;
  draft.hint = undefined;
  draft.unit = undefined;
  draft.assumedUnit = false;
  draft.question = "quantity";
}

const bottle = /^(?:bottle|tank|cylinder|cyl|jug|drum|can)s?$/;
const put = /^(?:charged|added|put|charge|adding|in|into)$/;

/** "cyl went from 24.5 to 40.7 lb", "bottle is at 31 lb": what stands on the scale, bottle and all. */
function scaleOf(draft: Draft, items: readonly Item[]): boolean {
  const ahead = items.slice(Math.max(0, draft.index - 5), draft.index);
  const at = ahead.findLastIndex(({ text }) => bottle.test(text));
  const words = ahead.slice(at + 1);
  if (at < 0 || /^(?:into|in|to|of|from)$/.test(ahead[at - 1]?.text ?? "")) return false;
  return (
    words.some(({ text }) => /^(?:went|goes|weighs|scale|was|is|now|reads|at|from)$/.test(text)) &&
    !words.some(({ text, kind }) => put.test(text) || kind === itemKind.sign)
  );
}

/** "weighed the bottle, 23 lb before and 19 lb after": what the bottle has was not put in. */
export function bottleWeighed(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "mass" || draft.action === undefined) return;
  if (scaleOf(draft, items)) {
    draft.action = undefined;
    return;
  }
  if (draft.action !== "charged") return;
  const at = items.findIndex(({ text }) => /^weigh(?:ed|s|ing)?$/.test(text));
  if (at < 0 || !items.slice(at + 1, at + 4).some(({ text }) => bottle.test(text))) return;
  if (!items.some(({ text }) => put.test(text))) draft.action = undefined;
}

/** "recovered 2.8 of 3.2 kg": the second is what the machine holds, not what was moved. */
export function ofTheCharge(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "mass" || draft.action === undefined) return;
  const article = items[draft.index - 1]?.text === "the" ? 1 : 0;
  const end = draft.index - article;
  const [number, joint] = items.slice(Math.max(0, end - 2), end);
  if (joint?.text !== "of" || number?.kind !== itemKind.number) return;
  draft.action = undefined;
  draft.rating = "nameplate_charge";
}

/** "charging to 10 sc", "fill 28 lb max": where it is to end, not where it is. */
export function aimedAt(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity === "subcooling" || draft.quantity === "superheat") {
    const [verb, to] = [items[draft.index - 2], items[draft.index - 1]];
    if (to?.text === "to" && /^(?:charging|charge|filling)$/.test(verb?.text ?? ""))
      draft.rating ??= "expected";
  } else if (draft.quantity === "mass" && draft.action === "charged") {
    if (/^(?:max|maximum|limit)$/.test(items[draft.index + 1]?.text ?? "")) notMeasured(draft);
  }
}

/** "gone off the bus, 1 to 6 answer": no bus is said as a range without its volts. */
function busRange(draft: Draft): void {
  if (draft.place !== "dc_bus" || Number.isNaN(draft.high)) return;
  draft.question = "quantity";
}

/** Numbers that refrigerants are called by without their letter. Source: ANSI/ASHRAE Standard 34. */
const gasNumbers: ReadonlySet<number> = new Set([404, 407, 410, 134, 448, 449, 454, 507, 513]);

/** "58/228 410": behind both gauges no third follows. */
function behindPair(draft: Draft, items: readonly Item[]): boolean {
  const next = items[draft.index + 1];
  if (draft.before.length > 0 || (next !== undefined && next.kind !== itemKind.line)) return false;
  const pair = [3, 1].map((back) => items[draft.index - back]);
  return (
    items[draft.index - 2]?.text === "/" &&
    items[draft.index - 4]?.text !== "/" &&
    pair.every((item) => item?.kind === itemKind.number)
  );
}

/** "suct 118 ll 96 hd 340 410": behind gauges that each have their name nothing without one follows. */
function behindGauges(draft: Draft, items: readonly Item[]): boolean {
  const next = items[draft.index + 1];
  if (draft.before.length > 0 || (next !== undefined && next.kind !== itemKind.line)) return false;
  const [label, number] = items.slice(Math.max(0, draft.index - 2), draft.index);
  if (number?.kind !== itemKind.number || label?.label?.hint !== "pressure") return false;
  return items.filter((item) => item.label?.place !== undefined).length > 1;
}

/** "head 231 = 404": the gas, no second head. */
function gasCalled(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "pressure" || !draft.assumedUnit || !gasNumbers.has(draft.value)) return;
  const equals = items[draft.index - 1]?.text === "=" && draft.place === undefined;
  if (!equals && !behindPair(draft, items) && !behindGauges(draft, items)) return;
  notMeasured(draft);
  draft.unit = undefined;
  draft.assumedUnit = false;
}

const switches = /^(?:sw|switch|switches|cutout|hps|lps|hpco|lpco)$/;

/** "hi pressure cutout 410, reset at 310": where a switch closes again is set, not measured. */
function resetAt(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "pressure" || draft.rating !== undefined || draft.place !== undefined)
    return;
  const [verb, at] = items.slice(Math.max(0, draft.index - 2), draft.index);
  const closes =
    /^(?:at|@)$/.test(at?.text ?? "") && /^(?:resets?|reopens|recloses)$/.test(verb?.text ?? "");
  const set = items.some(({ label, text }) => label?.rating === "setpoint" || switches.test(text));
  if (closes && set) draft.rating = "setpoint";
}

/** Pressures, weights and a bus that a bare word alone does not settle are asked. */
export function guardGas(draft: Draft, items: readonly Item[], context: Context): void {
  const { units } = context;
  chargedInto(draft, items);
  gasCalled(draft, items);
  resetAt(draft, items);
  lowHead(draft, units);
  busRange(draft);
  if (!oilAgain(draft, context)) oilAlone(draft, items);
  dischargeAlone(draft, items, units);
}
