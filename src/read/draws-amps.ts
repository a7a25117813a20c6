import { isParted } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { takeFor } from "./recast.ts";

const draws = /^(?:pulls|draws|pulling|drawing|pulled|drew)$/;
const also = /^(?:about|around|like|only|just|now|at)$/;

/** "put a new cap in, fan 3 pulls 2.4": what a motor draws with its capacitor are amps. */
export function drawsAmps(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (draft.unit !== undefined || draft.over || draft.rating !== undefined) continue;
    if (items[draft.index]?.kind !== itemKind.number) continue;
    const at = also.test(items[draft.index - 1]?.text ?? "") ? draft.index - 2 : draft.index - 1;
    if (!draws.test(items[at]?.text ?? "")) continue;
    const cap = items.findLastIndex(({ label }, i) => i < at && label?.quantity === "capacitance");
    if (cap < 0 || isParted(items, at, draft.index)) continue;
    takeFor(draft, "current", "A");
    draft.place = undefined;
  }
}
