import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const cables = /^(?:cable|cables|feeder|wire|wires|wiring|harness|whip|conductors?|run)$/;
const alone =
  /^(?:alone|by|itself|themselves|its|their|own|on|only|just|the|is|are|reads|megs|to|ground|over|:)$/;

/** "cable alone 0.3 meg": megohms of a cable that nothing hangs on are none of the winding's. */
export function cableAlone(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (draft.unit?.dimension !== "resistance" || draft.unit.factor < 1e3) continue;
    if (draft.subject !== undefined || draft.points !== undefined) continue;
    let at = draft.index - 1;
    let told = false;
    while (at >= 0 && (items[at]?.kind === itemKind.ground || alone.test(items[at]?.text ?? ""))) {
      told ||= /^(?:alone|itself|themselves|own|only|just)$/.test(items[at]?.text ?? "");
      at--;
    }
    if (told && cables.test(items[at]?.text ?? "")) draft.subject = "cable";
  }
}
