import type { QuantityName } from "../quantities/list.ts";
import type { Draft } from "./draft.ts";
import { unitCalled } from "./kinds.ts";

/** Makes another quantity of a value, in the unit of that name: what it is was filled in, not said. */
export function recast(draft: Draft, quantity: QuantityName, figure: string): void {
  draft.quantity = quantity;
  draft.named = quantity;
  draft.unit = unitCalled(figure);
  draft.assumedQuantity = true;
}

/** So many of that quantity, in that unit by what stands around it: nothing else that was hinted holds. */
export function takeFor(draft: Draft, quantity: QuantityName, figure: string): void {
  draft.quantity = quantity;
  draft.named = quantity;
  draft.unit = unitCalled(figure);
  draft.assumedUnit = true;
  draft.hint = undefined;
}
