import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { between } from "./relate.ts";
import { alike, shapeOf } from "./shape.ts";

const family = (subject: string | undefined): string => subject?.replace(/ \S+$/, "") ?? "";

/** "circuit A's suction is 68 and circuit B's is 71": the same of the next of its kind. */
export function nextOfKind(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((draft, order) => {
    const left = list[order - 1];
    if (left?.quantity === undefined || left.place === undefined || left.rating !== undefined)
      return;
    if (draft.quantity !== undefined || draft.unit !== undefined || shapeOf(draft) !== "S") return;
    if (draft.subject === left.subject || family(draft.subject) !== family(left.subject)) return;
    if (draft.rating !== undefined || !alike(left, draft)) return;
    const gap = between(items, left, draft);
    const last = items[draft.index - 1];
    const led = last?.apostrophe === true || /^(?:is|at|has|its)$/.test(last?.text ?? "");
    if (gap.strong || !gap.calm || !led) return;
    draft.quantity = left.quantity;
    draft.unit = left.unit;
    draft.assumedUnit = true;
    draft.place = left.place;
  });
}
