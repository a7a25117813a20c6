import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** "it was either lead one or lead two at sixty meg": of which the figure is has to be asked. */
export function eitherPoint(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (draft.gone || draft.question !== undefined) continue;
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
