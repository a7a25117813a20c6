import type { QuantityName } from "../quantities/list.ts";
import type { Unit } from "../quantities/quantity.ts";
import type { Draft } from "./draft.ts";
import { fits, unitCalled, usualQuantity } from "./kinds.ts";

/** What the whole message says about how its resistances and volts are meant. */
export interface Setting {
  /** pipes are spoken of, and no test of insulation */
  readonly pipes: boolean;
  /** an insulation test is in hand */
  readonly insulation: boolean;
  readonly winding: boolean;
  readonly diode: boolean;
  readonly vacuum: boolean;
  /** a capacitor is spoken of */
  readonly capacitor: boolean;
  /** a sensor's or a heater's ohms are spoken of */
  readonly component: boolean;
  /** a compressor is named */
  readonly compressor: boolean;
}

/** uF; where no capacitor is spoken of, more "mic" than that are microns. Common practice, no source. */
const mostMics = 250;

function isGround(draft: Draft): boolean {
  return (
    draft.grounded ||
    (draft.points?.some((points) => points[1] === "ground" || points[0] === "ground") ?? false)
  );
}

function isPair(draft: Draft): boolean {
  return draft.points?.some((points) => points.length === 2 && !points.includes("ground")) ?? false;
}

function isDiode(draft: Draft): boolean {
  return draft.points?.some((points) => points.some((point) => point.startsWith("DC"))) ?? false;
}

/** "lead 1 500k": a lead's ohms in thousands are to ground. */
function onLead(draft: Draft): boolean {
  return (
    draft.points?.every((one) => one.length === 1 && one[0]?.startsWith("lead") === true) === true
  );
}

/** "L1-T1": both sides of a contactor's pole. */
function throughPole({ points }: Draft): boolean {
  const [one = "", other = ""] = points?.[0] ?? [];
  return /^L[123]$/.test(one) && /^T[123]$/.test(other);
}

/** Which resistance: to ground it is insulation, between pins a winding, of a component its own. */
export function resistanceOf(
  draft: Draft,
  unit: Unit | undefined,
  setting: Setting,
): QuantityName | undefined {
  const factor = unit?.factor ?? 0;
  if (draft.named === "winding_resistance" && !isGround(draft) && factor < 1e6)
    return "winding_resistance";
  if (draft.component && (draft.named !== "resistance" || isGround(draft)) && factor >= 1e6)
    return "insulation_resistance";
  // "element to case 500k"
  if (draft.component && isGround(draft) && factor === 1000) return "insulation_resistance";
  if (draft.component) return "resistance";
  if (isGround(draft)) return "insulation_resistance";
  // "L1-T1 .3 ohm": through a pole or a fuse, no winding
  if (throughPole(draft) && factor < 1e6) {
    if (draft.unit === undefined) draft.assumedUnit = true;
    draft.unit ??= unitCalled("ohm");
    return "resistance";
  }
  if (isPair(draft))
    return factor >= 1e6 && (setting.insulation || draft.named === "insulation_resistance")
      ? "insulation_resistance"
      : "winding_resistance";
  if (factor >= 1e6) return "insulation_resistance";
  if (draft.named === "insulation_resistance" && factor !== 1) return "insulation_resistance";
  if (draft.named === "winding_resistance") return "winding_resistance";
  const named = draft.named === "resistance" && !setting.winding;
  if (named && draft.thing === undefined && draft.points === undefined) return "resistance";
  if (factor === 1000)
    // "comp 2: 340k" while megging: kilohms of a compressor are no winding's
    return (setting.insulation &&
      (draft.points !== undefined || (setting.compressor && draft.place === undefined))) ||
      onLead(draft)
      ? "insulation_resistance"
      : "resistance";
  if (onLead(draft) && draft.over && !setting.winding) return "insulation_resistance";
  // "0.2 ohms on the contacts of L1 and 4 on L2": a leg by itself has no winding
  if (setting.component && draft.points?.every((one) => /^L\d$/.test(one.join())) === true)
    return "resistance";
  if (draft.points !== undefined)
    return setting.insulation && !setting.winding ? "insulation_resistance" : "winding_resistance";
  if (setting.winding || draft.thing === "compressor") return "winding_resistance";
  return factor === 1 && draft.named === "insulation_resistance"
    ? "insulation_resistance"
    : "resistance";
}

/** Letters that several units share are told apart by what is measured. */
function sharedLetter(draft: Draft, setting: Setting): void {
  const { unit, named } = draft;
  if (unit === undefined) return;
  const swap = swapped(draft, unit, named, setting);
  if (swap !== undefined) draft.unit = unitCalled(swap);
}

function temperatureLike(name: QuantityName | undefined): boolean {
  return (
    name === "temperature" ||
    name === "superheat" ||
    name === "subcooling" ||
    name === "temperature_difference" ||
    name === "wet_bulb_temperature"
  );
}

/** So many gigohms no tester of a crew shows; common practice, no source. */
const mostGigohms = 20;

function swapped(
  draft: Draft,
  unit: Unit,
  named: QuantityName | undefined,
  setting: Setting,
): string | undefined {
  switch (unit.figure) {
    case "kilohm":
      if (
        draft.letter === "K" &&
        named === undefined &&
        !draft.component &&
        draft.points === undefined &&
        draft.value >= 200 &&
        draft.value < 400 &&
        !setting.insulation &&
        !setting.winding
      )
        return "K";
      // "superheat 22 K, crankcase heater 0.35 A"
      if (difference(named) && draft.letter === "K") return "K";
      if (setting.component) return undefined;
      return temperatureLike(named) ? "K" : undefined;
    case "gigohm":
      if (
        draft.letter === "g" &&
        !setting.insulation &&
        draft.points === undefined &&
        draft.named === undefined
      )
        return "g";
      // "1.8 gig" is no gram, whatever was pulled; "charged 650 G" are no gigohms
      return (draft.letter === "g" || (draft.letter === "G" && draft.value >= mostGigohms)) &&
        (draft.action !== undefined || draft.rating === "nameplate_charge" || named === "mass")
        ? "g"
        : undefined;
    case "in wc":
      if (draft.letter === "wc" || draft.named === "static_pressure") return undefined;
      return draft.named === "vacuum" || draft.place === "suction" ? "inHg" : undefined;
    case "ft":
    case "in":
      if (
        named === "static_pressure" ||
        draft.place === "supply_air" ||
        draft.place === "return_air"
      )
        return "in wc";
      if (named === "vacuum" || (named === "pressure" && draft.place !== undefined)) return "inHg";
      return undefined;
    case "lb":
      if (
        named === "pressure" ||
        (draft.hint === "pressure" && draft.action === undefined) ||
        (draft.place !== undefined && draft.action === undefined) ||
        (draft.rating === "setpoint" && draft.action === undefined)
      )
        return "psi";
      return undefined;
    case "megohm":
      if (named === "length") return "m";
      // "35 m liquid pipe": metres
      return setting.pipes && draft.letter === "m" && draft.points === undefined ? "m" : undefined;
    case "F":
      if (draft.value > 0 && draft.value < 0.01 && draft.place === undefined && named === undefined)
        return "farad";
      return named === "capacitance" ? "microfarad" : undefined;
    case "milliohm":
      return isGround(draft) ||
        named === "insulation_resistance" ||
        (setting.insulation && !isPair(draft))
        ? draft.value >= 0.01 && draft.letter === "m"
          ? "megohm"
          : undefined
        : undefined;
    case "micron":
      return named === "capacitance" ? "microfarad" : undefined;
    case "microfarad":
      return named === "vacuum" ||
        (draft.letter === "mic" &&
          named === undefined &&
          (setting.vacuum ||
            draft.after !== undefined ||
            (draft.value >= mostMics && !setting.capacitor)))
        ? "micron"
        : undefined;
    default:
      return undefined;
  }
}

function voltageOf(draft: Draft, setting: Setting): QuantityName {
  if (Math.abs(draft.value) >= 5) return "voltage";
  if (draft.named === "diode_drop" || isDiode(draft)) return "diode_drop";
  if (setting.diode && draft.named !== "voltage" && Math.abs(draft.value) < 3) return "diode_drop";
  return "voltage";
}

/** K below which nothing here is as cold, so a difference is told; common practice, no source. */
const mostKelvin = 150;

function difference(named: QuantityName | undefined): boolean {
  return named === "superheat" || named === "subcooling" || named === "temperature_difference";
}

/** The quantity of a draft whose unit is known, by unit, label and setting. */
export function byUnit(draft: Draft, setting: Setting): QuantityName | undefined {
  sharedLetter(draft, setting);
  const { unit, named } = draft;
  if (unit === undefined) return undefined;
  if (unit.dimension === "resistance") return resistanceOf(draft, unit, setting);
  if (unit.dimension === "voltage") return voltageOf(draft, setting);
  if (unit.figure === "m" && setting.pipes && draft.letter === "m") return "length";
  // "liquid line 45 ft", "3/8 x 3/4 lines 45 ft"
  const free = draft.hint === "temperature" || (named ?? draft.hint) === undefined;
  if (unit.figure === "ft" && free && draft.value >= 3 && setting.pipes) return "length";
  // no kelvins as few as these are a warmth that this trade meets
  if (unit.figure === "K" && Math.abs(draft.value) < mostKelvin && !difference(named))
    return "temperature_difference";
  if (unit.settles === "relative_humidity") return "relative_humidity";
  if (unit.settles === "valve_opening") return "valve_opening";
  if (unit.figure === "Pa" && named === undefined)
    return setting.vacuum || draft.after !== undefined ? "vacuum" : "static_pressure";
  if (
    unit.dimension === "mass" &&
    (draft.rating === "nominal" || (draft.rating === "expected" && draft.plate))
  )
    draft.rating = "nameplate_charge";
  if (named === "water_flow" && /^(?:cfm|L\/s air)$/.test(unit.figure)) return "airflow";
  if (named === "vacuum" && unit.dimension === "pressure") return "pressure";
  // "broke it with nitrogen, then 400 microns"
  if (named === "pressure" && /^(?:micron|torr)$/.test(unit.figure)) return "vacuum";
  const pulled = setting.vacuum && unit.figure === "mbar" && draft.value < 50;
  if (named === "pressure" && pulled && draft.place === undefined) return "vacuum";
  if (named !== undefined && fits(named, unit.dimension))
    return named === "pressure" && unit.dimension === "low_pressure" && unit.factor > 1000
      ? "vacuum"
      : named;
  if (
    draft.hint !== undefined &&
    fits(draft.hint, unit.dimension) &&
    unit.dimension !== "low_pressure"
  )
    return draft.hint;
  return usualQuantity(unit.dimension);
}
