import type { Draft } from "./draft.ts";
import { inherit, sameDimension } from "./inherit.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

const verbs =
  /^(?:swing|hunt|cycl|bounc|jump|surg|oscillat|wander|drift|vari|fluctuat|mov(?:es|ing)$|flop|yo)/;

/** "swings", "hunting between": the verb right before item `at`, past small words. */
function swingsBefore(items: readonly Item[], at: number): number {
  for (let i = at - 1; i >= 0 && i >= at - 3; i--) {
    const item = items[i];
    if (item === undefined || item.kind !== itemKind.word) return -1;
    if (verbs.test(item.text)) return i;
    if (!/^(?:from|between|around|anywhere|about|at)$/.test(item.text)) return -1;
  }
  return -1;
}

/** Nothing but a comma or small words between a value and the verb. */
function follows(items: readonly Item[], left: Draft, verb: number): boolean {
  return items
    .slice(left.index + 1, verb)
    .every(
      (item) =>
        item.text === "," ||
        (item.kind === itemKind.word && (item.roles & (role.conjunction | role.is)) !== 0) ||
        /^(?:it|but|n|then|keeps?|still|valve|txv)$/.test(item.text),
    );
}

/** "14 V, jumps 9 to 21", "sh 9, hunting 4-15": a value, and between what it swings, which is of its kind. */
export function swings(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  list.forEach((right, order) => {
    const [left, low] = [list[order - 2], list[order - 1]];
    if (left === undefined || low === undefined || low.gone || right.index !== low.index + 2)
      return;
    if (!/^(?:-|to|and|n|&)$/.test(items[low.index + 1]?.text ?? "")) return;
    if ([low, right].some((draft) => Number.isNaN(draft.value) || draft.over || draft.same)) return;
    if (low.ownUnit || low.value >= right.value || low.points !== undefined) return;
    const verb = swingsBefore(items, low.index);
    if (verb < 0 || !follows(items, left, verb) || left.rating !== undefined) return;
    if (left.value < low.value * 0.5 || left.value > right.value * 2) return;
    if (
      !sameDimension(left, right) ||
      low.before.some((i) => items[i]?.label !== undefined && i !== verb)
    )
      return;
    inherit(left, right);
    right.state ??= left.state;
    right.before = [...right.before, ...low.before, low.index, low.index + 1, verb].sort(
      (a, b) => a - b,
    );
    right.high = right.value;
    right.value = low.value;
    low.gone = true;
    const item = items[low.index];
    if (item !== undefined) item.owner = "<value> to <value>";
  });
}
