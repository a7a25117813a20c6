import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Minutes that a defrost is cut off at; common practice, no source. */
const minutes = { from: 5, to: 120 } as const;

/** Where the word ends, if one stands here: "failsafe", "fail safe". */
function wordEnd(items: readonly Item[], i: number): number {
  if (/^fail-?safe$/.test(textAt(items, i))) return i + 1;
  return textAt(items, i) === "fail" && textAt(items, i + 1) === "safe" ? i + 2 : i;
}

function isMinutes(item: Item | undefined): boolean {
  if (!freeNumber(item)) return false;
  if (item.unit !== undefined) return item.unit.dimension === "time";
  return Number.isInteger(item.value) && item.value >= minutes.from && item.value <= minutes.to;
}

/** "termination 55 failsafe 30", "thirty minute fail safe": how long a defrost lasts at most, as it is set. */
export const defrostFailsafe: Rule = {
  name: "defrost failsafe <minutes>",
  heads: "failsafe|fail",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((_, i) => {
      const end = wordEnd(items, i);
      if (end === i) return;
      let at = end;
      while (/^(?:is|at|of|:|=|set|time|to|its)$/.test(textAt(items, at)) && at < end + 3) at++;
      if (isMinutes(items[at]) && items[at]?.kind === itemKind.number)
        state(note, defrostFailsafe.name, [i, at + 1], { kind: "note", about: "defrost failsafe" });
      else if (
        items[at]?.kind !== itemKind.number &&
        isMinutes(items[i - 1]) &&
        items[i - 1]?.unit !== undefined
      )
        state(note, defrostFailsafe.name, [i - 1, end], {
          kind: "note",
          about: "defrost failsafe",
        });
    });
  },
};
