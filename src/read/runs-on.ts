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

const loads: ReadonlySet<string | undefined> = new Set(["RLA", "FLA", "MOC"]);

/** "started 138 peak ran 19.8", "running, 12.1 12.2 12.0 on a 17 RLA": amps, whatever was measured before. */
export function peaksAndRuns(list: readonly Draft[]): boolean {
  const told = list.some(({ stat, rating }) => stat === "peak" || loads.has(rating));
  return told && list.some(({ state }) => state === "running");
}
