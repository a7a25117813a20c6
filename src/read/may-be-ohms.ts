import type { Draft } from "./draft.ts";

/** "suction 119 psi 51 F" after a lead was read: no value of this message is a test's, nor is its temperature. */
export function mayBeOhms({ unit, place, over, named }: Draft): boolean {
  if (over || named === "insulation_resistance" || named === "winding_resistance") return true;
  return unit === undefined
    ? place === undefined || place === "shell"
    : unit.dimension === "resistance";
}
