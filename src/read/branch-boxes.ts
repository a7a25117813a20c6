import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** Branch boxes on one outdoor unit at most. Common practice, no source. */
const most = 8;
const named = /^branch box /;

/** "EEV 210 box 1" behind "branch box 1 in 31,5 out 12": one of the boxes that were told before, no cold room's degrees. */
export function branchBoxes(items: readonly Item[], { readings }: Context): void {
  const told =
    readings.some(({ subject }) => named.test(subject ?? "")) ||
    items.some(({ subject }) => named.test(subject ?? ""));
  if (!told) return;
  items.forEach((box, i) => {
    const number = items[i + 1];
    if (box.text !== "box" || box.to - box.from > box.text.length) return;
    if (number?.kind !== itemKind.number || number.unit !== undefined) return;
    if (!/^\d$/.test(number.text) || number.value < 1 || number.value > most) return;
    number.kind = itemKind.subject;
    number.subject = `branch box ${number.value}`;
    box.kind = itemKind.word;
    box.label = undefined;
  });
}

/** "EEV 210 box 1 EEV 2 at 480": the box stands behind the figure that is its own, and leads no other. */
export function boxBehind(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((draft, order) => {
    const box = items[draft.index + 1]?.text === "box" ? draft.index + 2 : draft.index + 1;
    const name = items[box];
    if (name?.kind !== itemKind.subject || !named.test(name.subject ?? "")) return;
    if (draft.before.some((index) => items[index]?.kind === itemKind.subject)) return;
    if (!/^valve_/.test(draft.named ?? draft.hint ?? "")) return;
    const next = drafts[order + 1];
    draft.subject = name.subject;
    if (next === undefined || !next.before.includes(box)) return;
    next.before = next.before.filter((index) => index !== box);
    if (next.subject === name.subject) next.subject = undefined;
  });
}
