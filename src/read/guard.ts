import type { UnitHabit } from "../model.ts";
import type { Place } from "../vocabulary.ts";
import { ofTheTester } from "./conditions.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { changes } from "./guard-change.ts";
import { dropOfContacts, guardCoil } from "./guard-coil.ts";
import { aimedAt, bottleWeighed, guardGas, ofTheCharge } from "./guard-gas.ts";
import { beyondJunction, legsOfFrequency } from "./guard-legs.ts";
import { heaterCold, oilLevel, oilWeighed } from "./guard-oil.ts";
import {
  atWarmth,
  bulbPairs,
  degreesAcross,
  farFeet,
  farInches,
  kelvins,
  otherUnits,
  partDegree,
} from "./guard-unit.ts";
import { guardValve, valvesTogether } from "./guard-valve.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { madeOfMegohms } from "./made-of-megohms.ts";
import { canonical } from "./make.ts";
import { notMeasured } from "./not-measured.ts";
import { recast } from "./recast.ts";

type Range = readonly [low: number, high: number];

/** Degrees Celsius that a place can have where no unit was said; common practice, no source. */
const warmth: Readonly<Partial<Record<Place, Range>>> = {
  return_air: [-45, 65],
  supply_air: [-45, 95],
  outdoor_air: [-50, 60],
  indoor_air: [-45, 60],
  box: [-60, 60],
  product: [-60, 60],
  suction: [-70, 80],
  liquid: [-40, 95],
  water_in: [-15, 115],
  water_out: [-15, 115],
  condenser_in: [-15, 90],
  condenser_out: [-15, 90],
};
const anywhere: Range = [-70, 180];

/** Supplies that a bare "power 208" can mean; common practice, no source. */
const supplies: readonly number[] = [120, 208, 230, 240, 277, 400, 415, 460, 480, 575, 600];

export function nearSupply(value: number): boolean {
  return supplies.some((volts) => value > volts * 0.94 && value < volts * 1.06);
}

/** "power 208": kilowatts by habit, but the figure is a supply's. */
function power(draft: Draft): void {
  if (draft.quantity !== "power" || !draft.assumedUnit || draft.value < 100) return;
  if (nearSupply(draft.value)) {
    recast(draft, "voltage", "V");
  } else draft.question = "quantity";
}

/** "cap in, starts, peak 62": a capacitor has no peak. */
function peakOfCapacitor(draft: Draft, items: readonly Item[]): void {
  const peak = draft.before.some((index) => items[index]?.label?.stat !== undefined);
  if (draft.quantity === "capacitance" && peak) draft.question = "quantity";
}

/** "480 on all pairs": no winding has that, a supply has. */
function winding(draft: Draft): void {
  if (draft.quantity !== "winding_resistance" || !draft.assumedUnit || draft.over) return;
  if (draft.corrects || draft.value < 90) return;
  if (!nearSupply(draft.value)) {
    draft.question = "quantity";
    return;
  }
  recast(draft, "voltage", "V");
}

/** "+1.6 line": degrees go without saying only where a line can have them. */
function lineAlone(draft: Draft, items: readonly Item[], units: UnitHabit): void {
  if (draft.quantity !== "temperature" || !draft.assumedUnit || draft.place !== undefined) return;
  const words = [...draft.before, ...draft.behind].filter(
    (index) => items[index]?.label?.hint === "temperature",
  );
  const bare = words.every((index) => /^(?:line|ln|pipe)$/.test(items[index]?.text ?? ""));
  if (!bare || words.length === 0 || draft.named !== undefined) return;
  const value = canonical(draft, draft.value, units);
  if (value < -10 || value > 150) draft.question = "quantity";
}

/** "td 210": no air and no refrigerant changes that much. */
function difference(draft: Draft, units: UnitHabit): void {
  const heat = draft.quantity === "superheat" || draft.quantity === "subcooling";
  if (heat && draft.assumedUnit && canonical(draft, draft.value, units) > 45)
    draft.question = "quantity";
  if (draft.quantity !== "temperature_difference" || !draft.assumedUnit) return;
  if (canonical(draft, draft.value, units) > 60) draft.question = "quantity";
}

/** Cel; water that is measured on its way is no ice, unless something keeps it from freezing. */
const freezingCel = 0;

/** "water in 12.1 out 7.2" in a house of Fahrenheit: no water is that cold, so the scale is asked. */
function icyWater(draft: Draft, items: readonly Item[], units: UnitHabit): void {
  if (draft.quantity !== "temperature" || !draft.assumedUnit) return;
  if (draft.place !== "water_in" && draft.place !== "water_out") return;
  if (items.some(({ text }) => /^(?:glycol|brine)$/.test(text))) return;
  if (canonical(draft, draft.value, units) < freezingCel) draft.question = "unit";
}

/** "hp 1.5": a motor's horses as well as a gauge. */
function horses(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "pressure" || draft.place !== "discharge" || !draft.assumedUnit) return;
  const word = items[draft.index - 1]?.text;
  const gauges = items.some((item) => /^(?:lp|low|suct|suction)$/.test(item.text));
  if (word === "hp" && draft.value < 8 && !gauges) draft.question = "quantity";
}

/** "decay 0 in 30 min": nothing rose; no pump pulls to nothing. */
function nothing(draft: Draft): void {
  if (draft.quantity === "vacuum" && draft.assumedUnit && draft.value === 0)
    draft.question = "quantity";
}

/** "liquid at the outdoor 356 psig": air has no such pressure, the pipe that was named has. */
function inAir(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "pressure" || draft.place === undefined) return;
  if (!/_air$/.test(draft.place)) return;
  const pipes = draft.before.map((index) => items[index]?.label?.place);
  draft.place = pipes.find(
    (place) => place === "suction" || place === "discharge" || place === "liquid",
  );
}

/** "low speed 9": no motor turns so slowly. */
function slow(draft: Draft): void {
  if (
    draft.quantity === "rotational_speed" &&
    draft.assumedUnit &&
    draft.value > 0 &&
    draft.value < 60
  )
    draft.question = "quantity";
}

/** "a P eight on the third indoor", "fifteen something": a code's digits, a figure nobody has read. */
function halfSaid(draft: Draft, items: readonly Item[]): void {
  const [article, letter] = [items[draft.index - 2], items[draft.index - 1]];
  const code =
    draft.assumedUnit &&
    /^[b-z]$/.test(letter?.text ?? "") &&
    letter?.kind === itemKind.word &&
    /^(?:a|an)$/.test(article?.text ?? "");
  if (code || items[draft.index + 1]?.text === "something") draft.question = "quantity";
}

/** "fifty eight percent and it's seventy four": no second humidity follows so, but the air's warmth. */
function beginsAgain(draft: Draft, items: readonly Item[], units: UnitHabit): void {
  if (draft.quantity !== "relative_humidity" || draft.before.length > 0) return;
  if (!/^it'?s$/.test(items[draft.index - 1]?.text ?? "")) return;
  const inside = units === "us" ? draft.value >= 50 && draft.value < 100 : draft.value < 35;
  if (!inside || draft.value !== Math.floor(draft.value)) draft.question = "quantity";
  draft.quantity = "temperature";
  draft.named = "temperature";
  draft.unit = unitCalled(units === "us" ? "F" : "C");
  draft.assumedUnit = true;
}

/** "stack temp's three sixty": of burnt gas, as no air or line is. */
function ofFlue(draft: Draft, items: readonly Item[]): boolean {
  return draft.before.some((index) => /^(?:stack|flue|exhaust)$/.test(items[index]?.text ?? ""));
}

function temperature(draft: Draft, units: UnitHabit): void {
  if (draft.quantity !== "temperature" || draft.corrects) return;
  if (!draft.assumedUnit && (draft.before.length > 0 || draft.place !== undefined)) return;
  if (draft.over || Number.isNaN(draft.value)) return;
  const [low, high] = (draft.place === undefined ? undefined : warmth[draft.place]) ?? anywhere;
  const value = canonical(draft, draft.value, units);
  const small =
    units === "us" &&
    (draft.place === "supply_air" || draft.place === "return_air") &&
    Math.abs(draft.value) < 5 &&
    !Number.isInteger(draft.value);
  if (value < low || value > high || small) draft.question = "quantity";
}

const everyday = /^(?:miles|mile|truck|van|odometer|dollars|bucks|hours|people|mileage|change)$/;

/** "oil at 90000": far beyond every gauge, so nothing that was measured. */
function beyond(draft: Draft, items: readonly Item[], units: UnitHabit): void {
  if (draft.quantity !== "pressure" || !draft.assumedUnit) return;
  if (canonical(draft, draft.value, units) < 4e7) return;
  const talk = items.some((item) => everyday.test(item.text) && item.kind !== itemKind.number);
  draft.quantity = undefined;
  draft.question = talk ? undefined : "quantity";
  if (talk) notMeasured(draft);
}

/** "ret 75 sup 55. lead 3 4.4": no lead has a temperature, a pressure or a weight. */
function pointed(draft: Draft): void {
  const { quantity, points } = draft;
  if (points === undefined || quantity === undefined || draft.corrects) return;
  if (notElectrical.has(quantity)) draft.question = "quantity";
}

const notElectrical: ReadonlySet<string> = new Set([
  "temperature",
  "wet_bulb_temperature",
  "temperature_difference",
  "superheat",
  "subcooling",
  "pressure",
  "vacuum",
  "mass",
  "relative_humidity",
  "airflow",
  "water_flow",
  "static_pressure",
]);

/** What was filled in must be likely: a figure that its assumed unit makes odd is asked, not filed. */
export function guard(drafts: readonly Draft[], items: readonly Item[], context: Context): void {
  const { units } = context;
  for (const draft of drafts) {
    if (!draft.gone) oilWeighed(draft, items);
    heaterCold(draft, drafts, items);
    if (!draft.gone) bottleWeighed(draft, items);
    if (!draft.gone) ofTheCharge(draft, items);
    if (!draft.gone) aimedAt(draft, items);
    if (!draft.gone) changes(draft, items);
    if (!draft.gone) inAir(draft, items);
    if (!draft.gone) kelvins(draft);
    if (!draft.gone) farInches(draft, items);
    if (!draft.gone) otherUnits(draft, items);
    if (!draft.gone) partDegree(draft, items);
    if (!draft.gone) farFeet(draft, items);
    if (!draft.gone) atWarmth(draft, items);
    if (!draft.gone) degreesAcross(draft, items);
    if (draft.gone || draft.ownUnit) continue;
    madeOfMegohms(draft);
    icyWater(draft, items, units);
    halfSaid(draft, items);
    beginsAgain(draft, items, units);
    guardGas(draft, items, context);
    guardCoil(draft, items);
    power(draft);
    pointed(draft);
    if (ofTheTester(draft, items)) draft.question = "quantity";
    guardValve(draft, items);
    peakOfCapacitor(draft, items);
    winding(draft);
    if (!ofFlue(draft, items)) temperature(draft, units);
    slow(draft);
    nothing(draft);
    oilLevel(draft, items);
    horses(draft, items);
    lineAlone(draft, items, units);
    difference(draft, units);
    beyond(draft, items, units);
  }
  bulbPairs(drafts, items);
  legsOfFrequency(drafts);
  beyondJunction(drafts);
  valvesTogether(drafts);
  dropOfContacts(drafts, items);
}
