import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";

/** F; a liquid line is no hotter, and its pressure seldom lower in psi; common practice, no source. */
const mostLiquid = 180;

/** F; a suction line that hot is rare, and so many psi are usual; common practice, no source. */
const mostSuction = 100;

/** Nothing else of the note may be the pressure of that side. */
function alone(draft: Draft, drafts: readonly Draft[]): boolean {
  return drafts.every((other) => {
    if (other === draft || other.gone) return true;
    const kind = other.named ?? other.hint;
    return kind !== undefined ? kind !== "pressure" : other.unit !== undefined;
  });
}

/** "ll 340": what no line's degrees can be is its pressure; "suction line 118" may be either. */
export function lineTooHot(drafts: readonly Draft[], units: UnitHabit): void {
  if (units !== "us") return;
  for (const draft of drafts) {
    if (draft.hint !== "temperature" || draft.named !== undefined || draft.unit !== undefined)
      continue;
    if (draft.rating !== undefined || draft.corrects) continue;
    if (draft.place === "liquid" && draft.value >= mostLiquid) draft.hint = "pressure";
    else if (draft.place === "suction" && draft.value >= mostSuction && alone(draft, drafts))
      draft.question = "quantity";
  }
}
