import type { Draft } from "./draft.ts";

/** Nothing but its place was said of it. */
function isPlaced(draft: Draft): boolean {
  return (
    draft.unit === undefined &&
    draft.named === undefined &&
    draft.hint !== undefined &&
    draft.place !== undefined &&
    draft.points === undefined &&
    draft.rating === undefined &&
    draft.before.length === 0
  );
}

/** "amps 9 13 6 at the disconnect": the place stands behind the last and is of the whole row, what was named as well. */
export function rowToEnd(drafts: readonly Draft[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  list.forEach((last, at) => {
    const [first, middle] = list.slice(Math.max(0, at - 2), at);
    if (first?.named === undefined || middle === undefined || !isPlaced(last)) return;
    if (first.named === last.hint) return;
    const bare = middle.before.length + middle.behind.length === 0 && middle.unit === undefined;
    if (!bare || middle.index !== first.index + 1 || last.index !== middle.index + 1) return;
    last.named = first.named;
    last.hint = undefined;
    last.unit = first.unit;
  });
}
