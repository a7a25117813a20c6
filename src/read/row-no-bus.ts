import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { between } from "./relate.ts";

/** V, of a supply's line. Common practice, no source. */
const lineV = { from: 90, to: 700 } as const;

function isBusVolts(draft: Draft | undefined): draft is Draft {
  return (
    draft !== undefined &&
    draft.quantity === "voltage" &&
    (draft.place === "dc_bus" || draft.kind === "dc") &&
    draft.value >= lineV.from &&
    draft.value <= lineV.to &&
    draft.points === undefined
  );
}

/** "dc overvoltage at night, line 511 512 510": a bus is one figure; three in a row are the three lines. */
export function rowNoBus(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((third, order) => {
    const [first, second] = [list[order - 2], list[order - 1]];
    if (!isBusVolts(first) || !isBusVolts(second) || !isBusVolts(third)) return;
    const rowed = [
      [first, second],
      [second, third],
    ].every(([left, right]) => {
      if (left === undefined || right === undefined) return false;
      const gap = between(items, left, right);
      return gap.list || gap.empty;
    });
    const spread =
      Math.max(first.value, second.value, third.value) /
      Math.min(first.value, second.value, third.value);
    if (!rowed || spread > 1.2) return;
    for (const draft of [first, second, third]) {
      draft.place = undefined;
      draft.kind = undefined;
    }
  });
}
