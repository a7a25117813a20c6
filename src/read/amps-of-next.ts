import { type Item, itemKind } from "./item.ts";

/** Volts at least between two legs of a supply. Common practice, no source. */
const leastVolts = 90;

/** "L1-L2 478 amps 22": between two legs there are volts. */
function acrossLegs(item: Item, points: Item["points"]): boolean {
  const pair = points?.every(
    (one) => one.length === 2 && one.every((leg) => /^(?:L[123]|N|phase [ABC])$/.test(leg)),
  );
  return pair === true && item.value >= leastVolts;
}

/** "suction 165 head 170 amps 7": the word stands between two figures, and the first is a gauge's. */
export function ampsOfNext(items: readonly Item[]): void {
  items.forEach((item, i) => {
    const next = items[i + 1];
    const place = items[i - 1]?.label?.place;
    if (item.kind !== itemKind.number || item.unit?.dimension !== "current") return;
    const gauge = place === "suction" || place === "discharge" || place === "liquid";
    if (!gauge && !acrossLegs(item, items[i - 1]?.points)) return;
    if (next?.kind !== itemKind.number || next.unit !== undefined || next.glued) return;
    if (item.unitFrom + 4 > item.to) return;
    next.unit = item.unit;
    next.unitFrom = next.to;
    item.unit = undefined;
    item.to = item.numberTo;
  });
}
