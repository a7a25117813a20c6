import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** V, what a supply is called by; and how far from it its lines may be told. Common practice, no source. */
const callV = { from: 100, to: 620 } as const;
const farthest = 0.3;
const sizes = "<number> <size of a thing>";

/** "179 178 180 on a 208 unit": figures of the size of the supply that is named beside them. */
export function onASupply(list: readonly Draft[], items: readonly Item[]): void {
  const supply = items.find(
    ({ kind, owner, value }) =>
      kind === itemKind.number && owner === sizes && value >= callV.from && value <= callV.to,
  );
  if (supply === undefined) return;
  const lines = list.filter(
    (draft) =>
      draft.unit === undefined &&
      draft.named === undefined &&
      draft.rating === undefined &&
      draft.action === undefined &&
      Math.abs(draft.value / supply.value - 1) <= farthest,
  );
  if (lines.length < 2 || list.some(({ unit }) => unit?.dimension === "pressure")) return;
  for (const draft of lines) {
    draft.named = "voltage";
    draft.unit = unitCalled("V");
    draft.assumedUnit = true;
    draft.hint = undefined;
  }
}
