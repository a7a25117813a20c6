import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { copyKind, strangeUnit, threeInRow } from "./like-others.ts";
import { between } from "./relate.ts";
import { alike, near } from "./shape.ts";

/** Its quantity is only what the place suggests: a unit in its row knows better. */
function hintedOnly(draft: Draft): boolean {
  return (
    draft.named === undefined &&
    draft.unit === undefined &&
    draft.hint !== undefined &&
    draft.place === "supply_air"
  );
}

/** How many times the less of two figures beside each other the greater is in one row, at most. Our choice, no source. */
const mostOfRow = 2;

/** The first of the figures that stand in one row with this one, nothing or a stroke between them. */
function headOf(list: readonly Draft[], items: readonly Item[], from: number): Draft | undefined {
  let at = from;
  // "sc 18 20/20.2/19.9 amps": what stands before the strokes is of no row with them
  let pace = items[(list[from]?.index ?? 0) + 1]?.text === "/" ? 2 : undefined;
  for (let left = list[at - 1]; left !== undefined; left = list[at - 1]) {
    const own = list[at];
    const step = (own?.index ?? 0) - left.index;
    const joined = step === 1 || (step === 2 && items[left.index + 1]?.text === "/");
    // "liquid line 103 11.3 11.5 11.2 A": a figure of another size heads no row
    const [less, more] = [left.value, own?.value ?? 0].sort((a, b) => a - b);
    const other = (less ?? 0) * mostOfRow < (more ?? 0);
    if (
      !joined ||
      step !== (pace ?? step) ||
      other ||
      (own?.before.length ?? 0) > 0 ||
      left.ownUnit
    )
      break;
    pace = step;
    at--;
  }
  return list[at];
}

/** A row of values without labels between: what the one says holds for the other. */
export function alongLists(list: readonly Draft[], items: readonly Item[]): void {
  for (let i = list.length - 2; i >= 0; i--) {
    const left = list[i];
    const right = list[i + 1];
    if (left === undefined || right === undefined || right.quantity === undefined) continue;
    if (left.unit !== undefined || (left.named !== undefined && left.named !== right.quantity))
      continue;
    if (
      hintedOnly(left) &&
      right.unit?.dimension === "voltage" &&
      items[left.index + 1]?.text === "/"
    ) {
      left.quantity = undefined;
      left.hint = undefined;
    }
    if (left.quantity !== undefined && left.quantity !== right.quantity) continue;
    // "amps 25.2 25.4 25.1, 85 Hz": what heads its row says what it is
    const head = headOf(list, items, i);
    if (head !== left && (head?.quantity ?? right.quantity) !== right.quantity) continue;
    const gap = between(items, left, right);
    if (!alike(left, right) && !threeInRow(list, i)) continue;
    if (
      (gap.list || gap.empty) &&
      right.unit !== undefined &&
      !right.assumedUnit &&
      right.before.length === 0
    )
      copyKind(right, left);
  }
  for (let i = 1; i < list.length; i++) {
    const left = list[i - 1];
    const right = list[i];
    if (left === undefined || right === undefined || left.quantity === undefined) continue;
    const gap = between(items, left, right);
    if (!gap.list && !gap.empty) continue;
    if (right.unit !== undefined && right.quantity !== left.quantity) continue;
    if (right.before.length > 0) continue;
    if (gap.empty && left.ownUnit && strangeUnit(items, left, right)) continue;
    if (left.rating !== undefined) {
      if (items[left.index + 1]?.text !== "/" || left.rating !== "nominal") continue;
      right.rating ??= left.rating;
    }
    if (right.quantity === undefined && left.quantity !== "capacitance" && !near(left, right))
      continue;
    if (right.quantity === undefined) copyKind(left, right);
    right.subject ??= left.subject;
    right.state ??= left.state;
    right.kind ??= left.kind;
    right.component = right.component || left.component;
    if (right.quantity === left.quantity) right.place ??= left.place;
  }
}
