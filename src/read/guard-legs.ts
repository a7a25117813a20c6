import type { Draft } from "./draft.ts";
import { isLineVolts } from "./line-volts.ts";
import { recast } from "./recast.ts";

/** Amps at most that a bare figure of a leg can mean: supplies begin above; common practice, no source. */
const mostAmps = 95;

/** "R-S 481" behind a diode test: no junction drops that much, a supply has it. */
export function beyondJunction(drafts: readonly Draft[]): void {
  for (const draft of drafts) {
    if (draft.quantity !== "diode_drop" || draft.ownUnit || draft.over) continue;
    if (Math.abs(draft.value) < 5) continue;
    if (isLineVolts(draft.value) && draft.points !== undefined) {
      draft.quantity = "voltage";
      draft.named = "voltage";
      draft.assumedQuantity = true;
    } else draft.question = "quantity";
  }
}

/** "running 60hz L1 21.8 L2 22.0 L3 21.7": no leg has a frequency of its own; what is told of it is its amps. */
export function legsOfFrequency(drafts: readonly Draft[]): void {
  for (const draft of drafts) {
    if (draft.quantity !== "frequency" || draft.ownUnit || draft.points === undefined) continue;
    if (draft.value <= 0 || draft.value > mostAmps) {
      draft.question = "quantity";
      continue;
    }
    recast(draft, "current", "A");
    draft.assumedUnit = true;
  }
}
