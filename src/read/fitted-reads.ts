import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import type { Note } from "./note.ts";
import { NEW_SIZE } from "./rules/new-size.ts";

/** A capacitor that is fitted reads no farther from its size; common practice, no source. */
const nearSize = 0.2;
const was = /^(?:was|were|old|weak|low|bad|down)$/;
const shows = /^(?:reads?|reading|measures?|measuring|checks?|tests?|shows?|meters?|got|at|now)$/;

const bare = (draft: Draft): boolean =>
  !draft.gone && !draft.ownUnit && draft.points === undefined && draft.place === undefined;

/** "put a new five on the fan, it reads 5.1": what the capacitor that was just fitted reads. */
export function fittedReads(drafts: readonly Draft[], { items }: Note): void {
  const at = items.findIndex(({ owner, kind }) => owner === NEW_SIZE && kind === itemKind.number);
  const size = items[at];
  if (size === undefined) return;
  for (const draft of drafts) {
    if (!bare(draft) || draft.index < at || !isShown(items, draft.index)) continue;
    const old = wordBefore(items, draft.index, was) && draft.value < size.value;
    if (!old && Math.abs(draft.value - size.value) > nearSize * size.value) continue;
    draft.quantity = "capacitance";
    draft.action = undefined;
    draft.question = undefined;
    draft.assumedQuantity = true;
  }
}

const wordBefore = (items: readonly Item[], index: number, words: RegExp): boolean =>
  items.slice(Math.max(0, index - 3), index).some(({ text }) => words.test(text));

const isShown = (items: readonly Item[], index: number): boolean =>
  wordBefore(items, index, shows) || wordBefore(items, index, was);
