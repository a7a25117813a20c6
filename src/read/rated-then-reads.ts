import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { takeFor } from "./recast.ts";

const reads = /^(?:reads|read|reading|tests|tested|measures|measured)$/;

/** "fan 2 cap 7.5 reads 1.1": what a capacitor reads, whatever was told of its fan before. */
export function capThenReads(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || left.named !== "capacitance" || right.gone) return;
    const told = right.unit ?? right.quantity ?? right.named ?? right.points ?? right.place;
    if (told !== undefined || right.index !== left.index + 2) return;
    if (!reads.test(items[left.index + 1]?.text ?? "")) return;
    takeFor(right, "capacitance", left.unit?.figure ?? "microfarad");
  });
}
