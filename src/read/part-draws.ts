import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { between } from "./relate.ts";

/** "heaters 8.9 8.7 0 amps": the figure that has the unit of its row. */
function lastOfRow(
  list: readonly Draft[],
  order: number,
  items: readonly Item[],
): Draft | undefined {
  for (let at = order + 1; at < list.length; at++) {
    const [left, right] = [list[at - 1], list[at]];
    if (left === undefined || right === undefined || right.before.length > 0) return undefined;
    const gap = between(items, left, right);
    if (!gap.list && !gap.empty) return undefined;
    if (right.ownUnit) return right;
  }
  return undefined;
}

/** "heaters 8.1 and 8.2 amps", "box -19, coil -27": a part's figure that is no resistance of it. */
export function partDraws(list: readonly Draft[], order: number, items: readonly Item[]): void {
  const draft = list[order];
  if (draft === undefined || !draft.component || draft.unit !== undefined) return;
  // no ohms are negative
  if (draft.value < 0) {
    draft.component = false;
    draft.hint = "temperature";
    return;
  }
  const row = lastOfRow(list, order, items)?.unit?.dimension === "current";
  if (draft.hint !== "current" && !row) return;
  draft.component = false;
  draft.named = "current";
}
