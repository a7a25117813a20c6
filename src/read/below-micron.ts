import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** micron; no compressor pumps down to so many psi. Common practice, no source. */
const leastMicron = 800;

/** "can't get below 1800", "won't pull under 1500": so many of what a vacuum pump is told by. */
export function belowMicron(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (draft.unit !== undefined || draft.named !== undefined || draft.points !== undefined)
      continue;
    if (draft.value < leastMicron || draft.value > 30_000) continue;
    const [verb, joint] = [items[draft.index - 2]?.text ?? "", items[draft.index - 1]?.text ?? ""];
    if (!/^(?:below|under|past|beneath)$/.test(joint)) continue;
    if (!/^(?:get|gets|go|goes|pull|pulls|pulling|got|down|drop|drops)$/.test(verb)) continue;
    draft.named = "vacuum";
    draft.quantity = "vacuum";
    draft.unit = unitCalled("micron");
    draft.assumedUnit = true;
    draft.hint = undefined;
  }
}
