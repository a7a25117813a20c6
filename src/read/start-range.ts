import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** Of a start capacitor's printed range, what it may measure; common practice, no source. */
const share = { from: 0.1, to: 1.5 } as const;

/** Its own word before it, and "on a" before what is printed. */
function on(left: Draft | undefined, right: Draft, items: readonly Item[], word: RegExp): boolean {
  if (left === undefined) return false;
  const figures = items.slice(left.index + 3, right.index + 1);
  if (!figures.every(({ kind, text }) => kind === itemKind.number || text === "-")) return false;
  const told =
    items[left.index + 1]?.text === "on" && /^an?$/.test(items[left.index + 2]?.text ?? "");
  const bare = [left, right].every(
    ({ unit, points, over }) => unit === undefined && points === undefined && !over,
  );
  return told && bare && word.test(items[left.index - 1]?.text ?? "");
}

function make(measured: Draft, printed: Draft): void {
  for (const draft of [measured, printed]) {
    draft.named = "capacitance";
    draft.quantity = "capacitance";
    draft.unit = unitCalled("microfarad");
    draft.assumedUnit = true;
    draft.hint = undefined;
    draft.state = undefined;
  }
  printed.rating = "nominal";
}

/**
 * "run 40.1 on a 40, start 201 on a 189-227": only a start capacitor is printed with a range so wide, and
 * the run one beside it is told alike.
 */
export function startRange(list: readonly Draft[], items: readonly Item[]): void {
  const at = list.findIndex((right, order) => {
    const left = list[order - 1];
    if (Number.isNaN(right.high) || !on(left, right, items, /^start$/)) return false;
    const ratio = (left?.value ?? 0) / right.value;
    return ratio >= share.from && ratio <= share.to;
  });
  const [measured, printed] = [list[at - 1], list[at]];
  if (measured === undefined || printed === undefined) return;
  make(measured, printed);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left !== undefined && on(left, right, items, /^run$/)) make(left, right);
  });
}
