import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** V, of a supply that gives way, and the share that it keeps. Common practice, no source. */
const supplyV = { from: 90, to: 620 } as const;
const keeps = { from: 0.6, to: 1 } as const;

/** "199 running, falls to 168 when it kicks on": amps rise when a motor starts, volts fall. */
export function fallsAtStart(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || left.unit !== undefined || right.unit !== undefined) return;
    const falls = items
      .slice(left.index + 1, right.index)
      .some(({ text }) => /^(?:falls|fell|drops|dropped|dips|dipped|sags|sagged|down)$/.test(text));
    const share = right.value / left.value;
    const start = right.state === "start" || items.some(({ label }) => label?.state === "start");
    if (!falls || !start || share < keeps.from || share >= keeps.to) return;
    if (left.value < supplyV.from || left.value > supplyV.to) return;
    if (left.place !== undefined || left.rating !== undefined || right.place !== undefined) return;
    for (const draft of [left, right]) {
      draft.named = "voltage";
      draft.hint = undefined;
      draft.unit = unitCalled("V");
      draft.assumedUnit = true;
    }
    right.state = "start";
  });
}
