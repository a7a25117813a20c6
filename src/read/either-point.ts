import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** "it was either lead one or lead two at sixty meg": of which the figure is has to be asked. */
export function eitherPoint(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (draft.gone || draft.question !== undefined) continue;
    if (eitherName(draft, items)) draft.question = "choice";
    const told = [...draft.before, ...draft.behind];
    const open = told.some((index) => {
      const [left, or, right] = items.slice(index - 2, index + 1);
      if (left === undefined || or === undefined || right === undefined) return false;
      if ((or.roles & role.or) === 0 || left.kind !== right.kind || !told.includes(index - 2))
        return false;
      const own = draft.points?.[0]?.[0] ?? draft.subject;
      if (own === undefined || !nameOf(right).startsWith(own) || denied(items, index - 2))
        return false;
      return named(left) && named(right) && nameOf(left) !== nameOf(right);
    });
    if (!open) continue;
    draft.question = "choice";
    // whatever is answered is of neither until it is named
    draft.points = undefined;
    draft.subject = undefined;
  }
}

/** "got 12 on the sc or the sh": whose figure it is, nobody knows. */
function eitherName(draft: Draft, items: readonly Item[]): boolean {
  const told = [...draft.before, ...draft.behind].filter((index) => isMeasured(items[index]));
  return told.some((index, order) => {
    const next = told[order + 1];
    if (next === undefined || next <= index + 1 || denied(items, index)) return false;
    const gap = items.slice(index + 1, next);
    const [left, right] = [items[index]?.label, items[next]?.label];
    const small = role.or | role.article | role.preposition;
    return (
      (left?.quantity !== right?.quantity || left?.place !== right?.place) &&
      gap.some(({ roles }) => (roles & role.or) !== 0) &&
      gap.every(({ roles }) => (roles & small) !== 0)
    );
  });
}

/** Does the word say what was measured, or where? */
function isMeasured(item: Item | undefined): boolean {
  return (item?.label?.quantity ?? item?.label?.place) !== undefined;
}

function named({ kind, points }: Item): boolean {
  return kind === itemKind.points ? points?.length === 1 : kind === itemKind.subject;
}

function nameOf({ points, subject }: Item): string {
  return points?.join() ?? subject ?? "";
}

/** "no juice on L1 or L2": of neither. */
function denied(items: readonly Item[], index: number): boolean {
  return items
    .slice(Math.max(0, index - 4), index)
    .some(({ roles }) => (roles & (role.not | role.zero)) !== 0);
}
