import { endsClause } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { inherit, sameDimension, unlabelled } from "./inherit.ts";
import type { Item } from "./item.ts";

const befores = /^(?:before|b4|bfr|befor|bfore|was|prior|cold|dirty|old)$/;
const afters = /^(?:after|aftr|afterward|afterwards|aft|later|since|then|clean)$/;

/** "388 b4", "before wash head 410": is the word told of this value, right behind it or ahead of it in its clause? */
function toldOf(items: readonly Item[], draft: Draft, words: RegExp): boolean {
  const next = items[draft.index + 1];
  if (next !== undefined && words.test(next.text)) return true;
  for (let at = draft.index - 1; at >= 0 && at >= draft.index - 6; at--) {
    const item = items[at];
    if (item === undefined || endsClause(item)) return false;
    if (words.test(item.text)) return true;
  }
  return false;
}

/**
 * "head 388 b4 hose, 331 aftr", "before wash head 410, after 340": the same gauge twice, before and after
 * something was done; the second has neither name nor unit and is of the size of the first.
 */
export function beforeAfter(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || right.over || right.same) return;
    if (right.points !== undefined || right.subject !== undefined || left.rating !== undefined)
      return;
    if (left.named === undefined && left.place === undefined && left.unit === undefined) return;
    if (
      right.rating !== undefined ||
      !sameDimension(left, right) ||
      !unlabelled(items, left, right)
    )
      return;
    const ratio =
      (right.value * (right.unit?.factor ?? 1)) / (left.value * (left.unit?.factor ?? 1));
    const ohms = left.unit?.dimension === "resistance" && right.unit?.dimension === "resistance";
    if (right.unit !== undefined && (left.unit === undefined || (!ohms && !(ratio > 0.2)))) return;
    if (!ohms && !(ratio > 0.2 && ratio < 6)) return;
    // "99 degrees now, 101 before"
    const was = left.now && befores.test(items[right.index + 1]?.text ?? "");
    if (was) right.earlier = true;
    else if (!toldOf(items, left, befores) || !toldOf(items, right, afters)) return;
    right.action = undefined;
    inherit(left, right);
  });
}
