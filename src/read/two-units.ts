import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const letters =
  /^(?:c|f|k|psi|kpa|bar|oz|lb|lbs|pounds|ounces|volts|amps|ohms|meg|megs|gig|celsius|fahrenheit|microns|torr|inches|mv|ma)$/;

/** "450 kpa or psi", "12 amps or volts?": who wrote it does not know the unit, so it is asked. */
export function twoUnits(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (draft.gone || draft.unit === undefined) continue;
    const at = draft.ownUnit ? draft.index + 1 : draft.index + 2;
    const [joint, other] = [items[at], items[at + 1]];
    if (joint?.text !== "or" || other === undefined || other.kind === itemKind.number) continue;
    const unit = other.kind === itemKind.unit || letters.test(other.text);
    const ends = items[at + 2]?.kind !== itemKind.number;
    if (unit && ends) draft.question = "unit";
  }
}
