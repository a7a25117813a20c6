import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const group = /^group /;

/** "suction group A 24 group B 48", "group 2 now 44" behind them: what a rack's compressors of one temperature pull. */
export function suctionGroups(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  const pulls =
    items.some(({ text, label }) => text === "suction" || label?.place === "suction") ||
    readings.some(({ subject, at }) => at === "suction" && group.test(subject ?? ""));
  if (!pulls) return;
  const named = items.some(({ subject }) => group.test(subject ?? ""));
  for (const draft of drafts) {
    // "head 205 on both": one header for all of them
    if (named && draft.place === "discharge") draft.count = 1;
    const name = draft.before.findLast((index) => items[index]?.kind === itemKind.subject);
    if (name === undefined || !group.test(items[name]?.subject ?? "")) continue;
    const { unit, named: told, hint, place, rating, action } = draft;
    const free = [told, hint, place, rating, action].every((one) => one === undefined);
    if (!free || (unit !== undefined && unit.dimension !== "pressure")) continue;
    if (items[draft.index + 1]?.unit !== undefined) continue;
    draft.place = "suction";
    draft.hint = "pressure";
  }
}
