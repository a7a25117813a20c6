import type { Reading, Understood } from "../model.ts";
import { equipmentOf } from "../record/case.ts";
import { otherGas } from "../show/cylinder-question.ts";
import type { Memory } from "./memory.ts";
import { jobAt } from "./rest.ts";

const said =
  /\b(?:cylinder|cyl|bottle|tank|drum)\.?\s*(?:was\s+|is\s+)?(?:no\.?|number|#)?\s*([a-z]{0,3}-?\d+[a-z]?)\b/gi;

/** The numbers of the cylinders that a text names. */
export function cylindersIn(text: string): readonly string[] {
  return [...text.matchAll(said)].flatMap(([, number]) => (number === undefined ? [] : [number]));
}

/**
 * Gas weighed into or out of a cylinder that the office knows with another gas: the weight is kept
 * as said and challenged at once, since mixed gas can't be reclaimed.
 */
export function askedOfCylinder(
  memory: Memory,
  note: { readonly understood: Understood; readonly job: number; readonly text: string },
): Understood {
  const { understood, text } = note;
  const job = jobAt(memory, note.job);
  if (job === undefined || understood.ask.length > 0) return understood;
  const weighs = ({ quantity, action }: Reading): boolean =>
    quantity === "mass" && action !== undefined;
  // "cyl 22" behind a weight is that weight's
  const weighed = understood.readings.some(weighs) || job.readings.some(weighs);
  const gas = equipmentOf(job, memory.registry).refrigerant;
  if (!weighed || gas === undefined) return understood;
  for (const number of cylindersIn(text)) {
    const known = memory.registry.cylinders.find((one) => plain(one.number) === plain(number));
    if (known?.gas !== undefined && plain(known.gas) !== plain(gas)) {
      return { ...understood, ask: [otherGas({ number, holds: known.gas, gas })] };
    }
  }
  return understood;
}

const plain = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]/g, "");
