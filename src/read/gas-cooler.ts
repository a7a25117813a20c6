import type { UnitHabit } from "../model.ts";
import { type Draft, isUntold } from "./draft.ts";
import type { Item } from "./item.ts";

/** psi and bar that carbon dioxide has in a gas cooler. Common practice, no source. */
const cooler: Readonly<Record<UnitHabit, readonly [number, number]>> = {
  us: [800, 1900],
  si: [55, 130],
};

/** The words that name how warm the gas leaves its cooler: a label that says degrees and no place. */
function isOutlet(draft: Draft, items: readonly Item[]): boolean {
  return [...draft.before, ...draft.behind].some((index) => {
    const item = items[index];
    const degrees = item?.label?.hint === "temperature" && item.label.place === undefined;
    return degrees && /^(?:gas|gc|gascooler|gcot)/.test(item?.text ?? "");
  });
}

/** "gas cooler out 88 at 1180", "1205 at 91 gc out": beside the gas's warmth its pressure. */
export function coolerAt(drafts: readonly Draft[], items: readonly Item[], units: UnitHabit): void {
  const [low, high] = cooler[units];
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || !/^(?:at|@)$/.test(items[right.index - 1]?.text ?? "")) return;
    const [warm, force] = isOutlet(left, items) ? [left, right] : [right, left];
    if (!isOutlet(warm, items) || !isUntold(force) || force.gone) return;
    if (force.value < low || force.value > high) return;
    force.named = "pressure";
    force.place = "discharge";
  });
}
