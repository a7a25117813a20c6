import type { Unit } from "../../quantities/quantity.ts";
import { type Item, itemKind } from "../item.ts";
import type { Rule } from "../note.ts";
import { textAt } from "./near.ts";

function isTime(item: Item | undefined): boolean {
  return item?.kind === itemKind.number && item.unit?.dimension === "time";
}

function paced(items: readonly Item[], i: number): boolean {
  const before = textAt(items, i - 1);
  return (
    (before === "at" || before === "after" || before === "@") &&
    items[i - 2]?.kind === itemKind.number &&
    items[i - 2]?.owner === undefined
  );
}

/** The unit of the times that values of this message are paced by: "1450 at 2 minutes". */
function unitOf(items: readonly Item[]): Unit | undefined {
  const at = items.findIndex((item, i) => isTime(item) && paced(items, i));
  return at < 0 ? undefined : items[at]?.unit;
}

/** "1450 at 2 minutes, 2480 at 4, 3530 at 6": the unit said once holds for all its times. */
export const pacedTimes: Rule = {
  name: "<value> at <time>, <value> at <time>",
  heads: "at|after|@",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    const unit = unitOf(items);
    if (unit === undefined) return;
    items.forEach((item, i) => {
      if (
        item.kind === itemKind.number &&
        item.unit === undefined &&
        item.owner === undefined &&
        item.value <= 120 &&
        paced(items, i)
      )
        item.unit = unit;
    });
  },
};
