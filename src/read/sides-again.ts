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

/** How many times more or less the heats of a second circuit may be; a starved one has far less. Our choice, no source. */
const heatsApart = 6;

/** "circuit B is nineteen and three" behind "circuit A superheat 12 subcooling 8": both heats of the next circuit, in that order. */
export function heatsAgain(
  list: readonly Draft[],
  items: readonly Item[],
  { readings, latest }: Context,
): void {
  const last = readings.slice(-latest);
  const [first, second] = last;
  const heat = /^(?:superheat|subcooling)$/;
  if (last.length !== 2 || first?.subject === undefined || first.subject !== second?.subject)
    return;
  if (!heat.test(first.quantity) || !heat.test(second.quantity)) return;
  if (first.quantity === second.quantity) return;
  const [left, right, ...more] = list.filter((draft) => !draft.gone);
  if (left === undefined || right === undefined || more.length > 0) return;
  if (!isBare(left, items) || !isBare(right, items)) return;
  if (left.subject === undefined || left.subject === first.subject) return;
  if (left.subject.split(" ")[0] !== first.subject.split(" ")[0]) return;
  const joint = items[left.index + 1]?.text ?? "";
  if (right.index !== left.index + 2 || !/^(?:and|&|\/|over)$/.test(joint)) return;
  const fits = (draft: Draft, one: Reading): boolean => {
    const ratio = draft.value / Number(one.figure.number);
    return ratio > 1 / heatsApart && ratio < heatsApart;
  };
  if (!fits(left, first) || !fits(right, second)) return;
  left.named = first.quantity;
  right.named = second.quantity;
  right.subject = left.subject;
}

/** "c1 sub 19 super 6, c2 10 and 11": both heats of the next, in the order of the first. */
export function heatsOfNext(drafts: readonly Draft[], items: readonly Item[]): void {
  const heat = /^(?:superheat|subcooling)$/;
  drafts.forEach((left, order) => {
    const [one, other, right] = [drafts[order - 2], drafts[order - 1], drafts[order + 1]];
    if (one?.named === undefined || other?.named === undefined || right === undefined) return;
    if (!heat.test(one.named) || !heat.test(other.named) || one.named === other.named) return;
    if (!isBare(left, items) || !isBare(right, items)) return;
    const joint = items[left.index + 1]?.text ?? "";
    if (right.index !== left.index + 2 || !/^(?:and|&|\/)$/.test(joint)) return;
    // a name of its own and a comma stand before it
    const gap = items.slice(other.index + 1, left.index);
    if (!gap.some(({ text }) => text === ",") || gap.length < 2 || gap.length > 3) return;
    left.named = one.named;
    right.named = other.named;
    right.subject ??= left.subject;
  });
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
