import type { Assumed, Reading, Relation, Span } from "../model.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { quantityOf, unitCalled } from "./kinds.ts";
import type { Note } from "./note.ts";
import { ofOthers } from "./of-others.ts";
import { warmthFits } from "./place-warmth.ts";
import { subjectsOf } from "./subjects-together.ts";

/** In the quantity's canonical unit. */
export function canonical(draft: Draft, number: number, units: "us" | "si"): number {
  const { unit } = draft;
  if (unit === undefined || draft.quantity === undefined) return number;
  const quantity = quantityOf(draft.quantity);
  const row = unit.figure === "degrees" ? (unitCalled(units === "us" ? "F" : "C") ?? unit) : unit;
  const offset = quantity.difference === true ? 0 : (row.offset ?? 0);
  const negative = unit.figure === "inHg" && number > 0 ? -1 : 1;
  return clean(negative * number * row.factor + offset);
}

function clean(value: number): number {
  // a whole number of few digits is clean already; a negative zero is none
  if (Number.isInteger(value) && Math.abs(value) < 1e12) return value + 0;
  return Number(value.toPrecision(12));
}

/** Points as a reading holds them: a single point of an insulation test is to ground. */
function pointsOf(draft: Draft, points: readonly string[]): readonly string[] {
  if (points.length !== 1) return points;
  if (
    draft.quantity === "insulation_resistance" ||
    (draft.grounded && draft.quantity === "voltage")
  )
    return [points[0] ?? "", "ground"];
  return points;
}

function spansOf(note: Note, draft: Draft): Span[] {
  const indexes = [...draft.shared, ...draft.before, draft.index, ...draft.behind].sort(
    (a, b) => a - b,
  );
  const spans: [number, number][] = [];
  for (const index of indexes) {
    const item = note.items[index];
    if (item === undefined) continue;
    const last = spans[spans.length - 1];
    if (last !== undefined && note.text.slice(last[1], item.from).trim().length <= 3)
      last[1] = Math.max(last[1], item.to);
    else spans.push([item.from, item.to]);
  }
  return spans;
}

function relationOf(item: Item | undefined, draft: Draft): Relation {
  if (draft.over) return ">";
  if (!Number.isNaN(draft.high)) return "in";
  return item?.relation ?? "=";
}

function assumedOf(draft: Draft, points: readonly string[] | undefined): Assumed[] {
  const list: Assumed[] = [];
  if (draft.assumedUnit) list.push("unit");
  if (draft.assumedQuantity) list.push("quantity");
  if (
    draft.assumedPoints ||
    (points?.length === 2 && draft.points?.[0]?.length === 1 && !draft.grounded)
  )
    list.push("points");
  if (draft.assumedTest && draft.quantity === "insulation_resistance") list.push("test_voltage");
  return list;
}

/** "12 lb 6 oz": two numbers and two units are one figure. */
function compound(note: Note, item: Item): boolean {
  if (item.unit?.dimension !== "mass" || item.spoken) return false;
  return (
    /\d\D+\d+(?:\.\d+)?\s*(?:\p{L}+\.?)?$/u.test(note.text.slice(item.from, item.to)) &&
    item.unitFrom > 0 &&
    /\d/.test(note.text.slice(item.unitFrom, item.to))
  );
}

/** The number in the technician's own digits: as typed, or the figure of the words. */
function numberText(note: Note, item: Item | undefined, draft: Draft): string {
  if (draft.over) return "over range";
  if (item === undefined || item.kind !== itemKind.number) return String(draft.value);
  if (compound(note, item))
    return note.text.slice(item.from, item.to).replace(/\s*\p{L}+\.?$/u, "");
  // "38 down from 47": the value stands at the first of the two
  if (draft.series !== undefined && Math.abs(draft.value) !== Math.abs(item.value))
    return String(clean(draft.value));
  const typed = note.text.slice(item.from, item.numberTo);
  if (
    !item.spoken &&
    /^[-+]?[\d.,]+$/.test(typed) &&
    Number.isNaN(draft.high) &&
    !typed.includes(",")
  )
    return typed.startsWith(".") ? `0${typed}` : typed;
  return String(clean(draft.value));
}

/** Pa that a gas cooler of carbon dioxide runs at, at most. Common practice, no source. */
const mostTranscritical = 13e6;
const transcritical =
  /\b(?:co2|r?744|gas ?cooler|gc (?:out|outlet|pressure)|transcritical|flash tank|hpv)\b/;

function plausible(draft: Draft, value: number, { plain, context }: Note): boolean {
  if (draft.quantity === undefined) return true;
  const range = quantityOf(draft.quantity).plausible;
  if (range === undefined) return true;
  if (draft.quantity === "pressure" && draft.place === "suction" && value > 4.2e6) return false;
  if (draft.quantity === "temperature" && !warmthFits(draft.place, value)) return false;
  if (
    draft.quantity === "pressure" &&
    value > range[1] &&
    (context.co2 === true || transcritical.test(plain))
  )
    return value <= mostTranscritical;
  return value >= range[0] && value <= range[1];
}

const placed: ReadonlySet<string> = new Set([
  "pressure",
  "temperature",
  "wet_bulb_temperature",
  "temperature_difference",
  "superheat",
  "subcooling",
  "resistance",
  "relative_humidity",
  "static_pressure",
  "airflow",
  "vacuum",
]);
const byWire: ReadonlySet<string> = new Set(["voltage", "current", "frequency", "power"]);
const electric: ReadonlySet<string> = new Set(["supply", "drive_output", "dc_bus", "control"]);

/** A place counts only for what can be measured there: no room for volts, no bus for degrees. */
function placeOf(draft: Draft): Draft["place"] {
  const { place, quantity } = draft;
  if (place === undefined) return undefined;
  // "reset the control and it runs 14.9 amps": no control circuit draws so much
  if (quantity === "current" && place === "control" && draft.value > 10) return undefined;
  if (byWire.has(quantity ?? ""))
    return electric.has(place)
      ? place
      : place === "supply_air" && quantity === "voltage"
        ? "supply"
        : undefined;
  if (
    quantity === "insulation_resistance" ||
    quantity === "winding_resistance" ||
    quantity === "diode_drop" ||
    quantity === "capacitance" ||
    quantity === "mass"
  )
    return undefined;
  if (!placed.has(quantity ?? "")) return undefined;
  // "380 cfm in the board room": where it blows, no air of the room is meant
  if (quantity === "airflow" && place === "indoor_air") return undefined;
  return electric.has(place) ? undefined : place;
}

type Writable = { -readonly [Key in keyof Reading]: Reading[Key] };

const electrics: ReadonlySet<string> = new Set(["current", "voltage", "power", "frequency"]);
const untimed: ReadonlySet<string> = new Set([
  "temperature",
  "superheat",
  "subcooling",
  "static_pressure",
  "airflow",
  "mass",
  "current",
  "fault_code",
  "duration",
  "winding_resistance",
]);

/** Where, when and how it was measured, as far as it was said. */
function addConditions(reading: Writable, draft: Draft): void {
  const { quantity } = reading;
  if (draft.after !== undefined && (!untimed.has(quantity) || draft.series !== undefined))
    reading.after_s = clean(draft.after);
  if (draft.lasting !== undefined) {
    // what holds is read at the end of its hold
    if (quantity === "vacuum" || quantity === "pressure") reading.after_s ??= clean(draft.lasting);
    reading.for_s = clean(draft.lasting);
  }
  const place = placeOf(draft);
  if (place !== undefined) reading.at = place;
  // "122 amps when it tries, it's got an RLA of 19": a plate is in no state
  const plate = /^(?:RLA|FLA|LRA|MCA|MOP)$/.test(draft.rating ?? "");
  if (draft.state !== undefined && electrics.has(quantity) && !plate) reading.state = draft.state;
  if (draft.stat !== undefined && draft.rating === undefined) reading.stat = draft.stat;
  if (quantity === "voltage" || quantity === "current") {
    const kind = draft.unit?.kind ?? draft.kind;
    if (kind !== undefined) reading.kind = kind;
  }
  if (quantity === "pressure") {
    const reference = draft.unit?.reference ?? draft.reference;
    if (reference !== undefined) reading.reference = reference;
  }
}

/** What belongs to tests and masses, and whose or what kind of value it is. */
function addFacts(reading: Writable, draft: Draft): void {
  const { quantity } = reading;
  if (draft.rating === undefined) {
    const insulation = quantity === "insulation_resistance";
    if (draft.testVoltage !== undefined && insulation) reading.test_voltage = draft.testVoltage;
    if (draft.temperature !== undefined && (insulation || quantity === "winding_resistance"))
      reading.temperature = draft.temperature;
    if (draft.action !== undefined && quantity === "mass") reading.action = draft.action;
  } else if (
    (draft.rating !== "nameplate_charge" || quantity === "mass") &&
    (draft.rating !== "setpoint" || quantity !== "duration")
  )
    reading.rating = draft.rating;
  if (draft.subject !== undefined) reading.subject = draft.subject;
  if (draft.earlier) reading.earlier = true;
  if (draft.corrects) reading.corrects = true;
  if (draft.corrects && draft.nth !== undefined) reading.nth = draft.nth;
  if (draft.measuredAt !== undefined) reading.measured_at = draft.measuredAt;
}

function wordsOf(note: Note, spans: readonly Span[]): string {
  const [only] = spans;
  if (spans.length === 1 && only !== undefined) return note.text.slice(only[0], only[1]);
  return spans.map(([from, to]) => note.text.slice(from, to)).join(" ");
}

function figureUnit(note: Note, item: Item | undefined, draft: Draft): string {
  const { units } = note.context;
  if (draft.unit === undefined) return "";
  if (item !== undefined && compound(note, item)) return draft.unit.figure === "kg" ? "g" : "oz";
  if (draft.unit.figure !== "degrees") return draft.unit.figure;
  return units === "us" ? "F" : "C";
}

function one(note: Note, draft: Draft, points: readonly string[] | undefined): Reading | undefined {
  if (draft.quantity === undefined) return undefined;
  const { units } = note.context;
  const item = note.items[draft.index];
  const full = points === undefined ? undefined : pointsOf(draft, points);
  const value = draft.over ? null : canonical(draft, draft.value, units);
  const spans = spansOf(note, draft);
  const reading: Writable = {
    quantity: draft.quantity,
    relation: relationOf(item, draft),
    value,
    unit: quantityOf(draft.quantity).unit,
    said: wordsOf(note, spans),
    spans,
    assumed: assumedOf(draft, full),
    figure: { number: numberText(note, item, draft), unit: figureUnit(note, item, draft) },
    rule: "<label> <number> <unit>",
  };
  if (!Number.isNaN(draft.high)) reading.high = canonical(draft, draft.high, units);
  if (draft.over) reading.over_range = true;
  if (draft.series !== undefined)
    reading.series = draft.series.map((step) => canonical(draft, step, units));
  if (full !== undefined) reading.points = full;
  addConditions(reading, draft);
  addFacts(reading, draft);
  if (value !== null && !plausible(draft, value, note)) reading.doubtful = true;
  if (item !== undefined) note.figureAt.set(reading, item.from);
  return reading;
}

/** The readings that a draft stands for: one for each of its points, or as many as were said. */
export function make(note: Note, draft: Draft): Reading[] {
  const out: Reading[] = [];
  const list: (readonly string[] | undefined)[] =
    draft.points === undefined || draft.points.length === 0 ? [undefined] : [...draft.points];
  if (list[0] === undefined && draft.count > 1 && draft.quantity !== "mass") {
    const leads = draft.quantity === "insulation_resistance";
    list.length = 0;
    const others = ofOthers(note, draft);
    for (let i = 1; i <= draft.count; i++) list.push(leads && !others ? [`lead ${i}`] : undefined);
    if (leads && !others) draft.assumedPoints = true;
  }
  const subjects = list[0] === undefined ? subjectsOf(note, draft) : [];
  if (subjects.length > 1)
    return subjects
      .map((subject) => one(note, { ...draft, subject }, undefined))
      .filter((reading) => reading !== undefined);
  for (const points of list) {
    const reading = one(note, draft, points);
    if (reading !== undefined) out.push(reading);
  }
  return out;
}
