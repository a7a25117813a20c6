import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** Parts of gear that come one a leg, told apart by its letter or number. */
const parts =
  /^(?:lugs?|poles?|terminals?|studs?|stabs?|clips?|fuse|fuses|screws?|phase|leg|bearing)$/;

/** "A lug", "L2 lug", "pole 2": which of several parts stands right before the figure; "" for none. */
function partBefore(items: readonly Item[], at: number): string {
  const [first, second] = [items[at - 2]?.text ?? "", items[at - 1]?.text ?? ""];
  if (parts.test(second) && first.length <= 2) return second;
  return parts.test(first) && second.length <= 2 ? first : "";
}

/** "A lug 97, B lug 204, C lug 99 F": the degrees behind the last of a row are each one's. */
export function letteredRows(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((last, order) => {
    const { unit } = last;
    const part = partBefore(items, last.index);
    if (part === "" || unit?.dimension !== "temperature") return;
    for (let at = order - 1; at >= 0; at--) {
      const draft = drafts[at];
      if (draft === undefined || draft.unit !== undefined || draft.gone) return;
      if (partBefore(items, draft.index) !== part || isApart(items, draft, drafts[at + 1])) return;
      asWarm(draft, unit);
    }
  });
}

/** The degrees were said for the row: they are each one's own. */
function asWarm(draft: Draft, unit: Draft["unit"]): void {
  draft.unit = unit;
  draft.ownUnit = true;
  draft.named = "temperature";
  draft.hint = undefined;
}

function isApart(items: readonly Item[], left: Draft, right: Draft | undefined): boolean {
  const gap = items.slice(left.index + 1, right?.index);
  return gap.length > 4 || gap.some(({ kind }) => kind === itemKind.line);
}

/** How far apart the parts of one row may be, as a factor, before a bare figure is something else. Common practice, no source. */
const farthest = 3;

/** A bare figure right behind the name of its leg. */
function ofLeg(draft: Draft | undefined, items: readonly Item[]): draft is Draft {
  return (
    draft !== undefined &&
    !draft.gone &&
    draft.unit === undefined &&
    draft.named === undefined &&
    items[draft.index - 1]?.kind === itemKind.points
  );
}

/** "L2 lug 212F, L1 96, L3 98": the degrees of one leg's part are those of the others, told by their legs alone. */
export function legsAsWarm(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((first, order) => {
    const { unit, value } = first;
    const named =
      partBefore(items, first.index) !== "" || items[first.index - 1]?.kind === itemKind.points;
    if (!named || unit?.dimension !== "temperature" || !first.ownUnit) return;
    for (let at = order + 1; ; at++) {
      const draft = drafts[at];
      if (!ofLeg(draft, items) || isApart(items, drafts[at - 1] ?? first, draft)) return;
      if (draft.value * farthest < value || draft.value > value * farthest) return;
      asWarm(draft, unit);
    }
  });
}
