import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const heats: ReadonlySet<string> = new Set(["superheat", "subcooling"]);

/** "nobody pulled a vacuum. looks like 24 subcooling": the name right behind a bare figure is its own, not the vacuum told before. */
export function heatBehind(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (draft.ownUnit || draft.gone || (draft.named ?? draft.quantity) !== "vacuum") continue;
    const at = items[draft.index + 1]?.text === "of" ? draft.index + 2 : draft.index + 1;
    const quantity = items[at]?.label?.quantity;
    if (quantity === undefined || !heats.has(quantity)) continue;
    draft.named = quantity;
    draft.quantity = undefined;
    draft.unit = undefined;
    draft.hint = undefined;
  }
}
