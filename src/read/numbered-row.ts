import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** The noun whose number stands right before a figure: "port" of "port 3 0.8"; "" for none. */
function nounBefore(draft: Draft, items: readonly Item[]): string {
  const is = /^(?:is|at|was|:|=|reads)$/.test(items[draft.index - 1]?.text ?? "");
  const at = is ? draft.index - 2 : draft.index - 1;
  const [noun, number] = [items[at - 1], items[at]];
  // "port 1" is one item where it is a place
  if (number?.kind === itemKind.subject && number.owner !== undefined) return number.text;
  if (number?.kind !== itemKind.number || number.owner === undefined) return "";
  return noun?.kind === itemKind.number || noun === undefined ? "" : noun.text;
}

/** "port 1 46 ohm, port 2 46, port 3 0.8": what the first of a numbered row is, the others are, each by its number. */
export function numberedRow(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || left.gone || right.gone || left.quantity === undefined) return;
    if (right.quantity !== undefined || right.unit !== undefined || right.over) return;
    if (left.unit === undefined || left.rating !== undefined || right.rating !== undefined) return;
    const noun = nounBefore(left, items);
    if (noun === "" || noun !== nounBefore(right, items)) return;
    right.quantity = left.quantity;
    right.named = left.quantity;
    right.unit = left.unit;
    right.assumedUnit = true;
    right.place ??= left.place;
    right.question = undefined;
  });
}
