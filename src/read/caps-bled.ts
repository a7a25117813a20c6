import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** "caps bled from 560 down to 8 volts": what bleeds off capacitors is voltage at both ends. */
export function capsBled(items: readonly Item[], list: readonly Draft[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.named !== "capacitance" || left.unit !== undefined) return;
    if (right.unit?.dimension !== "voltage" || !right.ownUnit) return;
    if (right.value >= left.value) return;
    const middle = items.slice(left.index + 1, right.index).map(({ text }) => text);
    const down = middle.length <= 3 && middle.some((text) => /^(?:to|down)$/.test(text));
    if (!down || !middle.every((text) => /^(?:to|down|about|all|the|way)$/.test(text))) return;
    left.named = "voltage";
    left.hint = undefined;
    left.unit = unitCalled("V");
    left.component = false;
    left.thing = undefined;
  });
}
