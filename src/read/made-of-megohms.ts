import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { between } from "./relate.ts";

/** No winding's index is higher; above it a minute's figure is the insulation itself. Common practice, no source. */
const highestIndex = 15;

/** "PI 2.3, 1 min 310 10 min 713": the megohms that the index was made of. */
export function madeOfMegohms(draft: Draft): void {
  if (draft.quantity !== "polarization_index" || draft.after === undefined || draft.ownUnit) return;
  if (draft.value <= highestIndex) return;
  draft.quantity = "insulation_resistance";
  draft.named = undefined;
  draft.unit = unitCalled("megohm");
  draft.assumedUnit = true;
}

/** "winding: 310 305 312 meg": a row that ends in megohms is no winding's ohms, whatever led it. */
export function rowOfMegohms(items: readonly Item[], drafts: readonly Draft[]): void {
  const last = drafts.findLast((draft) => draft.unit !== undefined);
  if (last?.unit?.dimension !== "resistance" || last.unit.factor < 1e5) return;
  const from = drafts.findIndex(
    (draft) => draft.named === "winding_resistance" && draft.unit === undefined,
  );
  const [first, ...rest] = drafts.slice(from, drafts.indexOf(last) + 1);
  if (from < 0 || first === undefined) return;
  const row = [first, ...rest];
  const listed = row.every((draft, order) => {
    const left = row[order - 1];
    const near = draft.value > last.value * 0.3 && draft.value < last.value * 3;
    return near && (left === undefined || between(items, left, draft).list);
  });
  if (listed) first.named = undefined;
}
