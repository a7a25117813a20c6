import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const airs = /^(?:ambient|outdoor|outdoors|outside|oat|oa|air)$/;

/** "condensing 45 over ambient", "the two pipes 20 F apart": how far one stands from another, not where. */
export function degreesOver(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (draft.unit !== undefined && draft.unit.dimension !== "temperature") continue;
    if (draft.rating !== undefined) continue;
    const [joint, article, air] = [1, 2, 3].map((step) => items[draft.index + step]?.text ?? "");
    const behind = article === "the" ? (air ?? "") : (article ?? "");
    const over = /^(?:over|above)$/.test(joint ?? "") && airs.test(behind);
    const apart = joint === "apart" && draft.unit !== undefined;
    if (!over && !apart) continue;
    if (over && draft.unit === undefined && draft.hint !== "temperature") continue;
    draft.named = "temperature_difference";
    draft.hint = undefined;
    draft.place = undefined;
    draft.points = undefined;
  }
}
