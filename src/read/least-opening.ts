import { type Draft, isUntold } from "./draft.ts";
import type { Item } from "./item.ts";
import { takeFor } from "./recast.ts";

const damper = /^(?:economizer|economiser|econ|econo|damper|dampers|oad|actuator|oa)$/;
const least = /^(?:min|minimum|position|pos)$/;

/** "economizer stuck at forty percent with 91 outside, min should be 20": the opening that it should have. */
export function leastOpening(drafts: readonly Draft[], items: readonly Item[]): void {
  if (!items.some(({ text }) => damper.test(text))) return;
  drafts.forEach((draft, order) => {
    if (draft.rating !== "expected" || draft.gone || draft.unit !== undefined) return;
    const open = drafts.slice(0, order).find(({ unit }) => unit?.dimension === "percent");
    const led = items.slice(Math.max(0, draft.index - 4), draft.index);
    if (open === undefined || !led.some(({ text }) => least.test(text))) return;
    if (!isUntold({ ...draft, rating: undefined }) && draft.named !== undefined) return;
    takeFor(draft, "valve_opening", "percent");
    draft.place = undefined;
    draft.stat = undefined;
  });
}
