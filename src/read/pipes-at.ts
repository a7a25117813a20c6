import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const pipes = /^(?:pipe|pipes|piping|tubing|lineset|copper|gas)$/;
const verbs = /^(?:at|is|are|was|were|now|down|to|only|still|about|around)$/;

/** "33.4 bar this morning, pipes at 21": in a standing test the pipe's warmth, in the degrees that it was told in before. */
export function pipesAt(list: readonly Draft[], items: readonly Item[], context: Context): void {
  const before = context.readings.findLast((one) => one.quantity === "temperature");
  const scale = before?.figure.unit;
  if (scale === undefined || !context.readings.some((one) => one.quantity === "pressure")) return;
  for (const draft of list) {
    const free =
      draft.unit === undefined &&
      draft.named === undefined &&
      draft.points === undefined &&
      draft.rating === undefined;
    if (!free || (draft.hint !== undefined && draft.hint !== "temperature")) continue;
    let at = draft.index - 1;
    while (verbs.test(items[at]?.text ?? "")) at--;
    if (!pipes.test(items[at]?.text ?? "")) continue;
    draft.quantity = "temperature";
    draft.named = "temperature";
    draft.unit = unitCalled(scale);
    draft.assumedUnit = true;
  }
}
