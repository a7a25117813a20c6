import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

function says(draft: Draft, items: readonly Item[], words: RegExp): boolean {
  return draft.before.some((index) => words.test(items[index]?.text ?? ""));
}

/** "suction 6.4 bar saturation is minus two": of the side whose gauge was told right before. */
export function saturationOf(items: readonly Item[], draft: Draft, left: Draft | undefined): void {
  if (left === undefined || draft.place !== undefined || draft.named !== "temperature") return;
  if (!says(draft, items, /^(?:saturation|saturated|saturates)$/)) return;
  if (left.unit !== undefined && left.unit.dimension !== "pressure") return;
  if (left.unit === undefined && left.hint !== "pressure") return;
  if (left.place === "suction") draft.place = "suction_saturation";
  else if (left.place === "discharge" || left.place === "liquid")
    draft.place = "discharge_saturation";
}

/** "condenser entering 85 leaving 94.5": what leaves is the water of the same barrel. */
export function leavingSide(items: readonly Item[], draft: Draft, left: Draft | undefined): void {
  if (draft.place !== "water_out" || !says(draft, items, /^(?:leaving|lvg|lwt|outlet)$/)) return;
  const named = draft.before.some((index) => (items[index]?.label?.place ?? "") !== "");
  const bare = draft.before.every((index) => {
    const item = items[index];
    return item === undefined || item.label === undefined || item.to - item.from <= 7;
  });
  if (!named || !bare) return;
  if (left?.place === "condenser_in") draft.place = "condenser_out";
  else if (left?.place === "evaporator_in") draft.place = "evaporator_out";
}
