import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const sides: ReadonlySet<string> = new Set(["suction", "discharge", "liquid"]);

/** "118/50 on the suction", "low 118 @ 50": pressure and temperature of one side, in that order. */
export function sidePairs(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    const joint = left === undefined ? undefined : items[left.index + 1];
    if (
      left === undefined ||
      right.index !== left.index + 2 ||
      (joint?.text !== "/" && joint?.text !== "@")
    )
      return;
    const bare = [left, right].every(
      (one) =>
        one.unit === undefined &&
        one.points === undefined &&
        one.named === undefined &&
        one.rating === undefined,
    );
    if (!bare || items[right.index + 1]?.text === "/") return;
    const place = left.place ?? right.place;
    if (
      place === undefined ||
      !sides.has(place) ||
      (left.place !== undefined && right.before.length > 0)
    )
      return;
    left.place = place;
    right.place = place;
    left.named = "pressure";
    right.named = "temperature";
  });
}

/** "gauges 118 over 365": low side over high side. */
export function gaugePair(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (
      left === undefined ||
      right.index !== left.index + 2 ||
      items[left.index + 1]?.text !== "over"
    )
      return;
    if (
      left.unit !== undefined ||
      left.place !== undefined ||
      right.place !== undefined ||
      left.value >= right.value ||
      left.value < 5
    )
      return;
    if (
      !items
        .slice(0, left.index)
        .some((item) => /^(?:gauges|gauge|gages|pressures|running|pressure)$/.test(item.text))
    )
      return;
    left.place = "suction";
    right.place = "discharge";
    left.named = "pressure";
    right.named = "pressure";
    const item = items[right.index];
    if (item !== undefined) item.relation = "=";
  });
}

/** "SP 118 ST 50 HP 365": beside the other gauges SP is the suction pressure. */
export function gaugeLetters(items: readonly Item[], drafts: readonly Draft[]): void {
  if (!drafts.some((draft) => draft.rating === "setpoint")) return;
  if (!items.some((item) => /^(?:hp|st|slt|llt|dp)$/.test(item.text))) return;
  for (const draft of drafts) {
    if (
      !draft.before.some((index) => items[index]?.text === "sp") ||
      draft.rating !== "setpoint" ||
      draft.unit !== undefined
    )
      continue;
    draft.rating = undefined;
    draft.place = "suction";
    draft.named = "pressure";
  }
}

/** "68/52 ra/sa": values, then their names in the same order. */
export function slashed(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || items[left.index + 1]?.text !== "/" || right.index !== left.index + 2)
      return;
    const [first, stroke, second] = [
      items[right.index + 1],
      items[right.index + 2],
      items[right.index + 3],
    ];
    if (first?.label === undefined || stroke?.text !== "/" || second?.label === undefined) return;
    left.place = first.label.place;
    left.named = first.label.quantity;
    left.hint = first.label.hint;
    right.place = second.label.place;
    right.named = second.label.quantity;
    right.hint = second.label.hint;
  });
}
