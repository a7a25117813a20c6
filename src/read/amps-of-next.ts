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

/** "in 120 out 140 gpm 30": degrees on the way out of something, and then what flows. */
function flowOfNext(items: readonly Item[], i: number): boolean {
  const place = items[i - 1]?.label?.place ?? "";
  const side = /^(?:in|out|lvg|leaving)$/.test(items[i - 1]?.text ?? "");
  const before = items[i - 2]?.kind === itemKind.number;
  return (side && before) || /^(?:water|condenser|evaporator)_(?:in|out)$/.test(place);
}

/** Both sides by the water that runs through, where their words are no names yet. */
function ofTheWater(items: readonly Item[], i: number): void {
  for (const at of [i - 3, i - 1]) {
    const side = items[at];
    if (side === undefined || side.label?.place !== undefined) continue;
    const [into, out] = [/^in$/.test(side.text), /^(?:out|lvg|leaving)$/.test(side.text)];
    if (!into && !out) continue;
    side.kind = itemKind.label;
    side.label = { place: into ? "water_in" : "water_out", hint: "temperature" };
  }
}

/** "suction 165 head 170 amps 7": the word stands between two figures, and the first is a gauge's. */
export function ampsOfNext(items: readonly Item[]): void {
  items.forEach((item, i) => {
    const next = items[i + 1];
    const place = items[i - 1]?.label?.place;
    if (item.kind !== itemKind.number) return;
    const flow = item.unit?.figure === "gpm" && flowOfNext(items, i);
    if (!flow && item.unit?.dimension !== "current") return;
    const gauge = place === "suction" || place === "discharge" || place === "liquid";
    if (!flow && !gauge && !acrossLegs(item, items[i - 1]?.points)) return;
    if (next?.kind !== itemKind.number || next.unit !== undefined || next.glued) return;
    if (item.unitFrom + (flow ? 3 : 4) > item.to) return;
    if (flow) ofTheWater(items, i);
    next.unit = item.unit;
    next.unitFrom = next.to;
    item.unit = undefined;
    item.to = item.numberTo;
  });
}
