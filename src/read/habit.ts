import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { quantityOf, unitCalled } from "./kinds.ts";

function lastLike(
  context: Context,
  quantity: Draft["quantity"],
): Context["readings"][number] | undefined {
  for (let i = context.readings.length - 1; i >= 0; i--) {
    const reading = context.readings[i];
    if (reading?.quantity === quantity && reading?.figure.unit !== "") return reading;
  }
  return undefined;
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
}

export function habitUnit(draft: Draft, context: Context): void {
  if (draft.quantity === undefined || draft.unit !== undefined) return;
  const last = lastLike(context, draft.quantity);
  const { habit } = quantityOf(draft.quantity);
  const figure =
    last !== undefined && sameWorld(draft, last.figure.unit)
      ? last.figure.unit
      : habit?.[context.units];
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
