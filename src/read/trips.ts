import type { Draft } from "./draft.ts";
import { sameDimension } from "./inherit.ts";
import type { Item } from "./item.ts";

/** "oil diff 19 psi, trip 9": behind a value of its kind stands where it trips, which is set. */
export function trips(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  list.forEach((draft, order) => {
    const left = list[order - 1];
    if (left === undefined || draft.rating !== undefined || draft.points !== undefined) return;
    if (left.named === undefined && left.unit === undefined && left.hint === undefined) return;
    const [joint, word] = [items[draft.index - 2], items[draft.index - 1]];
    if (!/^(?:trip|trips)$/.test(word?.text ?? "")) return;
    if (joint?.text !== "," && joint !== items[left.index]) return;
    if (draft.sentence !== left.sentence || !sameDimension(left, draft)) return;
    draft.rating = "setpoint";
    draft.named = left.named;
    draft.hint = left.hint;
    if (draft.unit === undefined) draft.unit = left.unit;
    draft.subject ??= left.subject;
  });
}
