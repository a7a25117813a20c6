import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { between } from "./relate.ts";

/** "voltage drop at 24 A: 0.02 0.03": the amps are the load under which it was measured. */
export function underLoad(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((left, order) => {
    if (left.unit?.dimension !== "current" || items[left.index + 1]?.text !== ":") return;
    if (items[left.index - 1]?.text !== "at" && items[left.index - 1]?.text !== "@") return;
    const drop = items
      .slice(Math.max(0, left.index - 7), left.index)
      .some(({ text }) => /\bdrops?$/.test(text) || /^(?:voltage|volts)$/.test(text));
    if (!drop) return;
    left.named = "current";
    for (let i = order + 1; i < list.length; i++) {
      const [before, one] = [list[i - 1], list[i]];
      if (before === undefined || one === undefined || one.unit !== undefined) return;
      const gap = between(items, before, one);
      if (i > order + 1 && !gap.list && !gap.empty) return;
      one.named = "voltage";
    }
  });
}
