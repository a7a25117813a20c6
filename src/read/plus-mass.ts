import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** "out 9 lb 5 oz in 6 lb", "gas out 9.3 lb": the way stands before its weight. */
function leadsOut(items: readonly Item[], index: number): boolean {
  if (items[index - 1]?.text !== "out") return false;
  const before = items[index - 2];
  return before === undefined || before.kind === itemKind.sign || before.text === "gas";
}

/** "factory 9.6 kg + 0.9 for the line set": what the pipes add to a plate's charge, whether its unit is said again or not. */
export function plusForPipes(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((draft, order) => {
    const left = drafts[order - 1];
    const weighed =
      left?.unit === undefined ? left?.action !== undefined : left.unit.dimension === "mass";
    if (left === undefined || !weighed || left.gone || draft.gone) return;
    if (draft.unit !== undefined && draft.unit.dimension !== "mass") return;
    const between = items.slice(left.index + 1, draft.index).map(({ text }) => text);
    if (!/^(?:, )?(?:plus|\+|and|add|w|with)$/.test(between.join(" "))) return;
    const words = items.slice(draft.index + 1, draft.index + 5);
    const behind = words.map(({ text }) => text).join(" ");
    // "+ 14 oz ls adder"
    const adder = /^(?:for )?(?:the )?(?:ls|lineset|line ?set|pip\w*|line|tubing)\b/.test(behind);
    if (!adder && !/^for (?:the |extra |more )*(?:pip|line|run|len|tub|lineset)/.test(behind))
      return;
    if (draft.unit === undefined && left.unit !== undefined) draft.assumedUnit = true;
    draft.unit ??= left.unit;
    draft.named = undefined;
    draft.hint = undefined;
    draft.place = undefined;
    draft.series = undefined;
    if (left.rating !== undefined) {
      draft.rating ??= "expected";
      draft.action = undefined;
    } else draft.action ??= left.action;
  });
}

/** "+1 lb 2 oz", "sc 3, +8oz": so much more went in. */
export function plusMass(drafts: readonly Draft[], items: readonly Item[], plain: string): void {
  let wentOut = false;
  for (const draft of drafts) {
    const item = items[draft.index];
    if (draft.gone || draft.unit?.dimension !== "mass" || item === undefined) continue;
    const goesIn = wentOut && items[draft.index - 1]?.text === "in";
    wentOut = draft.rating === undefined && leadsOut(items, draft.index);
    if (wentOut || goesIn) draft.action = wentOut ? "recovered" : "charged";
    if (draft.action !== undefined || draft.rating !== undefined) continue;
    const signed = items[draft.index - 1]?.text === "+";
    const before = items[draft.index - (signed ? 2 : 1)];
    const plus = signed || plain.charAt(item.from) === "+" || plain.charAt(item.from - 1) === "+";
    // "6 lb + 4 oz" is a sum
    if (plus && !(before?.kind === itemKind.number && before.unit?.dimension === "mass"))
      draft.action = "charged";
  }
}
