import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const another = /^(?:third|last|other|second|fourth|next|rest)$/;
/** Words between a value and what is said of the next of its kind. */
const longestGap = 6;

/** What stands between two values where it only leads to another of the same: "the third one's dead". */
function leadsOn(left: Draft, right: Draft, items: readonly Item[]): boolean {
  const gap = items.slice(left.index + 1, right.index);
  const plain = gap.every(({ kind }) => kind === itemKind.word || kind === itemKind.sign);
  return plain && gap.length <= longestGap && gap.some(({ text }) => another.test(text));
}

/** "8.2 amps and 8.1, the third one's dead zero": none of what the row before it measures. */
function zero(row: Draft, draft: Draft): void {
  if (draft.value !== 0 || draft.quantity !== undefined || draft.unit !== undefined) return;
  if (row.quantity === undefined || row.unit === undefined || row.rating !== undefined) return;
  draft.quantity = row.quantity;
  draft.unit = row.unit;
  draft.assumedUnit = true;
  draft.place ??= row.place;
}

/** "fan 2 2.0 the last one is 0": another than the one named before it, which it was not told. */
function ofNobody(row: Draft, draft: Draft, items: readonly Item[]): void {
  if (draft.subject === undefined || draft.subject !== row.subject) return;
  const led = items.slice(row.index + 1, draft.index).map(({ text }) => text);
  const own = [...draft.before, ...draft.behind].some((i) => items[i]?.kind === itemKind.subject);
  const told = [...row.before, ...row.behind].some((i) => items[i]?.kind === itemKind.subject);
  if (told && !own && /\b(?:last|other) one\b/.test(led.join(" "))) draft.subject = undefined;
}

export function anotherOne(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  list.forEach((draft, at) => {
    const row = list[at - 1];
    if (row === undefined || !leadsOn(row, draft, items)) return;
    zero(row, draft);
    ofNobody(row, draft, items);
  });
}
