import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { isSameUnit, unitCalled } from "./kinds.ts";
import { megsOrGigs } from "./megs-or-gigs.ts";
import { isNear } from "./near-value.ts";
import { nounOf } from "./subject-noun.ts";

/** The unit that brings the value closest to what was read before; undefined where two could. */
function unitFor(draft: Draft, like: Reading, context: Context): string | undefined {
  const units = new Map<string, Reading>();
  for (const reading of context.readings)
    if (reading.quantity === like.quantity && reading.figure.unit !== "")
      units.set(reading.figure.unit, reading);
  const last = like.figure.unit;
  if (units.size < 2) return last;
  const again = saidBefore(draft, like, context);
  if (again !== undefined) return again.figure.unit;
  if (like.quantity === "insulation_resistance") return megsOrGigs(draft, [...units.keys()]);
  for (const [unit, reading] of units)
    if (!isSameUnit(unit, last) && isNear(draft.value, reading)) return undefined;
  return last;
}

/** "T3 0.4 meg", later "same thing, T3 point four": the same figure of the same lead. */
function saidBefore(draft: Draft, like: Reading, context: Context): Reading | undefined {
  const lead = draft.points?.[0]?.[0];
  if (lead === undefined || draft.points?.length !== 1) return undefined;
  return context.readings.findLast(
    ({ quantity, points, figure, rating }) =>
      quantity === like.quantity &&
      rating === undefined &&
      points?.[0] === lead &&
      Number(figure.number) === draft.value,
  );
}

/** Behind "on to comp 2" the same as of compressor 1 is compressor 2's. */
function turnedTo({ subject }: Reading, { machine }: Context): string | undefined {
  return machine !== undefined && isOfItsKind(machine, subject) ? machine : undefined;
}

/** Another machine of the same kind, or any where none was named. */
function isOfItsKind(machine: string, subject: string | undefined): boolean {
  return subject === undefined || nounOf(machine) === nounOf(subject);
}

/** A figure of what was read before: its quantity, its unit, whose it is. */
export function adopt(draft: Draft, reading: Reading, context: Context): void {
  const unit = unitFor(draft, reading, context);
  // a weight without its unit is asked about, whatever was weighed before
  const weighed = reading.quantity === "mass" && draft.action !== undefined;
  if (unit === undefined || (weighed && !/^k?g$/.test(unit))) {
    draft.question = "unit";
    return;
  }
  draft.quantity = reading.quantity;
  draft.unit = unitCalled(unit);
  draft.assumedUnit = draft.unit !== undefined;
  draft.subject ??= turnedTo(reading, context) ?? reading.subject;
  draft.kind ??= reading.kind;
}
