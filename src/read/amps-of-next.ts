import { type Item, itemKind } from "./item.ts";

/** "suction 165 head 170 amps 7": the word stands between two figures, and the first is a gauge's. */
export function ampsOfNext(items: readonly Item[]): void {
  items.forEach((item, i) => {
    const next = items[i + 1];
    const place = items[i - 1]?.label?.place;
    if (item.kind !== itemKind.number || item.unit?.dimension !== "current") return;
    if (place !== "suction" && place !== "discharge" && place !== "liquid") return;
    if (next?.kind !== itemKind.number || next.unit !== undefined || next.glued) return;
    if (item.unitFrom + 4 > item.to) return;
    next.unit = item.unit;
    next.unitFrom = next.to;
    item.unit = undefined;
    item.to = item.numberTo;
  });
}
