import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { copyKind } from "./like-others.ts";
import { alike } from "./shape.ts";

/** Is the next value of another clause, and said with a unit or a name of its own? */
function startsAnew(draft: Draft, next: Draft | undefined, items: readonly Item[]): boolean {
  if (next === undefined) return false;
  const parted = items.slice(draft.index + 1, next.index).some(({ text }) => text === ",");
  return (
    parted &&
    (next.ownUnit || next.before.some((index) => items[index]?.label ?? items[index]?.unit))
  );
}

/**
 * "suct 31 disch 192, set pt is 30, CHP-1 amps 44", "180 gpm now, was 240, line to line 208": what should be
 * or was, in a clause of its own, is told of the clause before it and not of the next.
 */
export function ofClauseBefore(
  list: readonly Draft[],
  order: number,
  items: readonly Item[],
): void {
  const draft = list[order];
  if (draft === undefined || (draft.rating === undefined && !draft.earlier)) return;
  if (draft.quantity !== undefined || draft.unit !== undefined) return;
  if ((draft.points ?? draft.place ?? draft.named) !== undefined) return;
  if (!startsAnew(draft, list[order + 1], items)) return;
  const told = list
    .slice(0, order)
    .findLast(
      (one) =>
        one.quantity !== undefined &&
        one.sentence === draft.sentence &&
        one.points === undefined &&
        alike(one, draft),
    );
  if (told !== undefined) copyKind(told, draft);
}
