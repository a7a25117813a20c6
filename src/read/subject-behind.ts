import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { copyKind } from "./like-others.ts";
import { nounOf } from "./subject-noun.ts";

/** Items between a value and the next: its subject, "and", no more. */
const mostBetween = 4;

/** Does its subject stand right behind it: "198 on circuit one"? */
function namedBehind(items: readonly Item[], draft: Draft): boolean {
  const [next, after] = [items[draft.index + 1], items[draft.index + 2]];
  if (next?.kind === itemKind.subject) return true;
  return /^(?:on|for|in|at)$/.test(next?.text ?? "") && after?.kind === itemKind.subject;
}

/** "discharge 198 on circuit one and 223 on circuit two": the same of each machine, said once. */
export function subjectsBehind(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.quantity === undefined || left.rating !== undefined) return;
    if (right.quantity !== undefined || right.unit !== undefined || right.named !== undefined)
      return;
    if (right.hint !== undefined || right.place !== undefined || right.points !== undefined) return;
    if (right.index - left.index - 1 > mostBetween) return;
    if (!namedBehind(items, left) || !namedBehind(items, right)) return;
    if (left.subject === undefined || right.subject === undefined) return;
    if (left.subject === right.subject || nounOf(left.subject) !== nounOf(right.subject)) return;
    const ratio = right.value / left.value;
    if (left.value !== 0 && right.value !== 0 && (ratio > 4 || ratio < 0.25)) return;
    copyKind(left, right);
    right.place = left.place;
    right.state ??= left.state;
    right.stat ??= left.stat;
    right.kind ??= left.kind;
  });
}
