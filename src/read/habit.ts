import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { quantityOf, unitCalled } from "./kinds.ts";

/** "blower 4.4 fla 5.2" behind a flame of 0.4 microamp: no motor draws so little, and no plate says it. */
function ofMotor(draft: Draft, unit: string): boolean {
  if (unit !== "microamp" && unit !== "mA") return false;
  return draft.named === "current" || draft.rating !== undefined || draft.thing !== undefined;
}

function lastLike(context: Context, draft: Draft): Context["readings"][number] | undefined {
  return context.readings.findLast(
    ({ quantity, figure }) =>
      quantity === draft.quantity && figure.unit !== "" && !ofMotor(draft, figure.unit),
  );
}

const metric = /^(?:bar|mbar|kPa|MPa)/;

const degrees: ReadonlySet<string> = new Set([
  "temperature",
  "wet_bulb_temperature",
  "dew_point_temperature",
  "superheat",
  "subcooling",
  "temperature_difference",
]);

/** The figure of a difference or a temperature in the scale that somebody has used: K is C's. */
function scaleOf(figure: string | undefined): "C" | "F" | undefined {
  if (figure === "C" || figure === "K") return "C";
  return figure === "F" ? "F" : undefined;
}

/**
 * The scale of the degrees said before on this job, where it is one: who tells the air in C means K by
 * his superheat. Pressures in bar stand for C too, where no degrees were said.
 */
function scaleBefore(context: Context): "C" | "F" | undefined {
  const scales = new Set<string>();
  let bars = false;
  for (const reading of context.readings) {
    if (reading.assumed.includes("unit")) continue;
    const scale = degrees.has(reading.quantity) ? scaleOf(reading.figure.unit) : undefined;
    if (scale !== undefined) scales.add(scale);
    if (reading.quantity === "pressure" && metric.test(reading.figure.unit)) bars = true;
  }
  if (scales.size > 1) return undefined;
  return scales.has("C") || (scales.size === 0 && bars) ? "C" : scales.has("F") ? "F" : undefined;
}

/** "liquid 41 C, SC 5", "5.1 bar SH 8": the scale of the message's own degrees, else of its bars. */
export function scaleBeside(draft: Draft, list: readonly Draft[]): void {
  if (draft.unit !== undefined || draft.quantity === undefined || !degrees.has(draft.quantity))
    return;
  const scales = new Set(
    list.flatMap((other) => {
      const said = other.ownUnit && !other.gone && other.unit?.dimension === "temperature";
      const scale = said ? scaleOf(other.unit?.figure) : undefined;
      return scale === undefined ? [] : [scale];
    }),
  );
  const bars = list.some((other) => other.ownUnit && metric.test(other.unit?.figure ?? ""));
  const [scale = bars ? "C" : undefined, ...others] = scales;
  if (scale === undefined || others.length > 0) return;
  draft.unit = unitCalled(scale);
  draft.assumedUnit = true;
}

/** Two units for the same thing before, and the value could be in either: nobody knows. */
function differing(draft: Draft, context: Context): boolean {
  const units = new Set<string>();
  for (const reading of context.readings) {
    if (
      reading.quantity !== draft.quantity ||
      reading.at !== draft.place ||
      reading.figure.unit === "" ||
      reading.corrects === true
    )
      continue;
    const ratio = draft.value / Number(reading.figure.number);
    if (ratio > 1 / 3 && ratio < 3) units.add(reading.figure.unit.replace("psig", "psi"));
  }
  return units.size > 1;
}

/** The unit that the message has used for the same thing. */
export function unitBefore(draft: Draft, list: readonly Draft[], order: number): void {
  if (draft.quantity !== "pressure" && draft.quantity !== "temperature") return;
  for (let i = order - 1; i >= 0; i--) {
    const other = list[i];
    if (other?.quantity !== draft.quantity || other.unit === undefined || other.assumedUnit)
      continue;
    if (other.unit.dimension === "inches_of_mercury" || other.unit.figure === "degrees") return;
    draft.unit = other.unit;
    draft.assumedUnit = true;
    return;
  }
  barsBehind(draft, list.slice(order + 1));
}

/** "LP 4.2 HP 18.6 bar": one unit for both, said with the last. */
function barsBehind(draft: Draft, rest: readonly Draft[]): void {
  if (draft.quantity !== "pressure") return;
  const other = rest.find((one) => one.ownUnit && one.unit?.dimension === "pressure");
  if (other?.unit === undefined || !metric.test(other.unit.figure)) return;
  const far = draft.value / other.value;
  if (far < 0.05 || far > 20) return;
  draft.unit = other.unit;
  draft.assumedUnit = true;
}

/**
 * "weighed in 12.6" behind "recovered 9.2 kg": kilograms go on where nothing but kilograms was said and
 * the figure is near; pounds never do, since the bare figure may be ounces.
 */
function kilograms(draft: Draft, context: Context, items: readonly Item[]): void {
  if (draft.unit !== undefined || draft.question !== undefined || draft.named !== undefined) return;
  const weighed = draft.action !== undefined || draft.rating === "nameplate_charge";
  if (draft.quantity !== undefined ? draft.quantity !== "mass" : !weighed) return;
  if (
    context.units === "si" &&
    isWeight(draft, items[draft.index]?.text ?? "") &&
    !onScale(items)
  ) {
    draft.quantity = "mass";
    draft.unit = unitCalled("kg");
    draft.assumedUnit = true;
    return;
  }
  const masses = context.readings.filter(
    ({ quantity, figure }) => quantity === "mass" && figure.unit !== "",
  );
  const last = masses[masses.length - 1];
  if (last === undefined || masses.some(({ figure }) => figure.unit !== "kg")) return;
  const far = draft.value / Number(last.figure.number);
  if (far < 0.1 || far > 10) return;
  draft.quantity = "mass";
  draft.unit = unitCalled("kg");
  draft.assumedUnit = true;
}

/** "bottle 12 weighed 14,6 before": what a scale shows, no gas that went anywhere. */
const onScale = (items: readonly Item[]): boolean =>
  items.some(({ text }) => /^(?:bottles?|cylinders?|cyl|tank|drum|before|gross|tare)$/.test(text));

/** kg that one scale shows at most. Our choice, no source. */
const mostOnScale = 120;

/** "filled 9,1": grams are told whole, so a figure with tenths that was weighed is kilograms. */
const isWeight = ({ value }: Draft, typed: string): boolean =>
  /^\d+[.,]\d+$/.test(typed) && value >= 0.05 && value < mostOnScale;

/** "plate says 9.2 kg plus 0.6 for the pipes": what it should take, nothing went in yet. */
function plusOnPlate(draft: Draft, left: Draft | undefined, items: readonly Item[]): void {
  if (left?.rating !== "nameplate_charge" || left.unit?.dimension !== "mass") return;
  if (draft.unit !== undefined && draft.unit.dimension !== "mass") return;
  const between = items.slice(left.index + 1, draft.index).map(({ text }) => text);
  if (!/^(?:, )?(?:plus|\+|and)$/.test(between.join(" "))) return;
  const behind = items.slice(draft.index + 1, draft.index + 5).map(({ text }) => text);
  if (behind[0] !== "for" || !behind.some((text) => /^(?:pip|line|run|extra|len)/.test(text)))
    return;
  draft.rating ??= "expected";
}

/** "weighed in 12.6 plus 1.4 for the pipes": kilograms on kilograms. */
export function plusKilograms(draft: Draft, left: Draft | undefined, items: readonly Item[]): void {
  plusOnPlate(draft, left, items);
  if (left?.quantity !== "mass" || left.unit?.figure !== "kg" || draft.index !== left.index + 2)
    return;
  if (!/^(?:plus|\+)$/.test(items[left.index + 1]?.text ?? "")) return;
  if (draft.unit !== undefined || draft.named !== undefined || draft.points !== undefined) return;
  draft.quantity = "mass";
  draft.unit = left.unit;
  draft.assumedUnit = true;
  draft.action ??= left.action;
}

export function habitUnit(draft: Draft, context: Context, items: readonly Item[]): void {
  kilograms(draft, context, items);
  if (draft.quantity === undefined || draft.unit !== undefined) return;
  const last = lastLike(context, draft);
  const { habit } = quantityOf(draft.quantity);
  const figure =
    last !== undefined && sameWorld(draft, last.figure.unit)
      ? last.figure.unit
      : ((degrees.has(draft.quantity) ? scaleBefore(context) : undefined) ??
        habit?.[context.units]);
  if (figure === undefined) return;
  if (differing(draft, context)) {
    draft.question = "unit";
    return;
  }
  draft.unit = unitCalled(figure);
  draft.assumedUnit = true;
}

function sameWorld(draft: Draft, figure: string): boolean {
  return (
    draft.quantity !== undefined &&
    unitCalled(figure)?.dimension === quantityOf(draft.quantity).dimensions[0]
  );
}
