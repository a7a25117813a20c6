import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import { type Draft, isUntold } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** How many times more or less than before both gauges may show. Our choice, no source. */
const apart = 2;

function isBare(draft: Draft, items: readonly Item[]): boolean {
  return isUntold(draft) && items[draft.index]?.kind === itemKind.number;
}

function near(draft: Draft, reading: Reading): boolean {
  const ratio = draft.value / Number(reading.figure.number);
  return ratio > 1 / apart && ratio < apart;
}

/** "on circuit 2 it's 62 and 205" behind "circuit 1 suction 68 head 218": both gauges once more, in that order. */
export function sidesAgain(
  list: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  const gauges = readings.filter(({ quantity, rating }) => quantity === "pressure" && !rating);
  const low = gauges.findLast(({ at }) => at === "suction");
  const high = gauges.findLast(({ at }) => at === "discharge" || at === "liquid");
  if (low === undefined || high === undefined || low.figure.unit !== high.figure.unit) return;
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || !isBare(left, items) || !isBare(right, items)) return;
    const joint = items[left.index + 1]?.text ?? "";
    if (right.index !== left.index + 2 || !/^(?:and|&|\/|over)$/.test(joint)) return;
    if (!near(left, low) || !near(right, high) || left.value >= right.value) return;
    left.place = low.at;
    right.place = high.at;
    for (const draft of [left, right]) draft.named = "pressure";
    right.subject = left.subject ?? right.subject;
  });
}
