import { isParted } from "./breaks.ts";
import { figureEach } from "./count-of-row.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { onePointEach } from "./volts-colon.ts";

/** "200 meg at 1000 V on all three, oil 48 psi": the volts are of the value before them in their clause. */
function isOfLeft(
  left: Draft | undefined,
  taken: Draft,
  next: Draft | undefined,
  items: readonly Item[],
): boolean {
  if (left === undefined || next === undefined) return false;
  const ohms = left.over || left.unit?.dimension === "resistance";
  return (
    ohms && !isParted(items, left.index, taken.index) && isParted(items, taken.index, next.index)
  );
}

/** Labels that were put with the test voltage belong to the next value: "500 volt test W to ground's …". */
export function handOn(drafts: readonly Draft[], taken: Draft, items: readonly Item[]): void {
  const at = drafts.indexOf(taken);
  const left = drafts[at - 1];
  const next = isOfLeft(left, taken, drafts[at + 1], items) ? undefined : drafts[at + 1];
  // "at 500 volts for a minute and got 38 meg": the minute is of the test
  const after = taken.after ?? taken.lasting;
  if (after !== undefined) {
    const times = [...taken.before, ...taken.behind];
    for (const other of drafts)
      if (!other.gone && !other.earlier && other.after === undefined) {
        other.after = after;
        other.shared.push(...times);
      }
  }
  if (next !== undefined) {
    if (onePointEach(drafts.slice(at + 1), taken)) return;
    next.points ??= taken.points;
    next.grounded = next.grounded || taken.grounded;
    next.subject ??= taken.subject;
    if (next.count === 1 && next.points === undefined && !figureEach(drafts, at, taken.count))
      next.count = taken.count;
    next.named ??= taken.named === "voltage" ? undefined : taken.named;
    next.component = next.component || taken.component;
    next.before = [...taken.before, ...taken.behind, ...next.before];
  } else if (left !== undefined) {
    left.points ??= taken.points;
    left.grounded = left.grounded || taken.grounded;
    // "200 meg at 1000 volts on all three"
    if (left.count === 1 && left.points === undefined) left.count = taken.count;
  }
}
