import type { Draft } from "./draft.ts";
import { unitCalled } from "./kinds.ts";

const leg = /^L[123]$/;

function ofLegs(draft: Draft): boolean {
  return draft.points?.every((points) => points.every((point) => leg.test(point))) === true;
}

/** Volts from line to line differ by less than this share of one another; beyond it something else is meant. */
const NEAR = 0.2;

/** "L1 468, L2 L3 471, L1 L3 465": a leg whose partner was not heard, among volts from line to line. */
export function legAmongPairs(list: readonly Draft[]): void {
  for (const draft of list) {
    if (draft.quantity !== undefined || draft.unit !== undefined || draft.over) continue;
    if (!ofLegs(draft) || draft.grounded) continue;
    const like = list.some(
      (other) =>
        other !== draft &&
        ofLegs(other) &&
        other.points?.[0]?.length === 2 &&
        (other.quantity === "voltage" || (other.quantity === undefined && other.value > 90)) &&
        Math.abs(other.value - draft.value) < NEAR * other.value,
    );
    if (!like) continue;
    draft.quantity = "voltage";
    draft.unit = unitCalled("V");
    draft.assumedUnit = true;
  }
}
