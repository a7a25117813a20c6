import type { Draft } from "./draft.ts";
import { asGauge, bareGauge } from "./gauges.ts";
import type { Item } from "./item.ts";

/** "120/52 F, 450 psi": the first of a stroke's two is the pressure where only the second has degrees. */
export function strokeDegrees(items: readonly Item[], drafts: readonly Draft[]): void {
  const gauges = drafts.filter((draft) => draft.unit?.dimension === "pressure");
  if (gauges.length === 0) {
    twoStrokes(items, drafts);
    return;
  }
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || items[left.index + 1]?.text !== "/") return;
    const other = gauges.find((draft) => draft !== left);
    if (other === undefined) return;
    if (right.index !== left.index + 2 || right.unit?.dimension !== "temperature") return;
    if (!bareGauge(left) || left.value < right.value) return;
    const place = left.value < other.value ? "suction" : "discharge";
    asGauge(left, place);
    right.place ??= place;
  });
}

/** "365 / 101 F and 128 / 54 F": both sides, each with its line's degrees behind the stroke. */
function twoStrokes(items: readonly Item[], drafts: readonly Draft[]): void {
  const pairs = drafts.flatMap((left, order) => {
    const right = drafts[order + 1];
    if (items[left.index + 1]?.text !== "/" || right?.index !== left.index + 2) return [];
    const warm = right.unit?.dimension === "temperature" && left.value > right.value;
    return warm && bareGauge(left) ? [[left, right] as const] : [];
  });
  const [one, two, ...more] = pairs;
  if (one === undefined || two === undefined || more.length > 0) return;
  for (const [left, right] of pairs) {
    const other = left === one[0] ? two[0] : one[0];
    const place = left.value < other.value ? "suction" : "discharge";
    asGauge(left, place);
    right.place ??= place;
  }
}
