import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { between } from "./relate.ts";

/** "running 22.1 22.5 21.8": the whole row was measured while it ran. */
export function runsOn(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.state !== "running" || left.quantity !== right.quantity) return;
    if (right.before.length > 0 || right.state !== undefined || right.rating !== undefined) return;
    const gap = between(items, left, right);
    if (gap.list || gap.empty) right.state = "running";
  });
}

/** "started 138 peak ran 19.8": amps by what is told, whatever was measured before. */
export function peaksAndRuns(list: readonly Draft[]): boolean {
  return list.some(({ stat }) => stat === "peak") && list.some(({ state }) => state === "running");
}
