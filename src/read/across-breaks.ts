import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** Words of its own line that mean nothing here: so many, and the line speaks of something else. */
const elsewhere = 2;

/** One word of money is enough. */
const paid = /^(?:receipts?|invoices?|bill|paid|price|cost|costs)$/;

const goesOn = /^(?:other|others|another|next|same|first|second|third|last|then|rest)$/;

/** Nothing but its neighbours says what it is. */
function isBare(draft: Draft, items: readonly Item[]): boolean {
  const told =
    draft.ownUnit ||
    draft.after !== undefined ||
    draft.earlier ||
    draft.now ||
    draft.corrects ||
    draft.rating !== undefined ||
    draft.points !== undefined ||
    draft.question !== undefined;
  if (told) return false;
  return [...draft.before, ...draft.behind].every((index) => {
    const { label, unit, kind } = items[index] ?? {};
    return (
      kind !== itemKind.subject &&
      label?.quantity === undefined &&
      label?.hint === undefined &&
      unit === undefined
    );
  });
}

function lineOf(items: readonly Item[], index: number): readonly Item[] {
  let from = index;
  while (from > 0 && !isBreak(items[from - 1])) from--;
  let to = index;
  while (to < items.length && !isBreak(items[to])) to++;
  return items.slice(from, to);
}

function isBreak(item: Item | undefined): boolean {
  return item?.kind === itemKind.line;
}

/** "the receipt was 41.87 \n herm 34.1 uF": a unit reaches over the end of a line only to what is like its own row. */
export function acrossBreaks(drafts: readonly Draft[], items: readonly Item[]): void {
  if (!items.some(isBreak)) return;
  for (const draft of drafts) {
    if (draft.gone || draft.quantity === undefined || !isBare(draft, items)) continue;
    const own = lineOf(items, draft.index);
    if (own.length === items.length) continue;
    const says = own.some(
      ({ label, unit, owner }) =>
        owner === undefined &&
        (unit !== undefined || label?.quantity !== undefined || label?.hint !== undefined),
    );
    // "and the other pair 1.92. third one 1.9"
    if (says || own.some(({ text }) => goesOn.test(text))) continue;
    const words = own.filter(
      ({ kind, roles, text }) => kind === itemKind.word && roles === 0 && text.length > 2,
    );
    if (words.length >= elsewhere || own.some(({ text }) => paid.test(text))) draft.gone = true;
  }
}
