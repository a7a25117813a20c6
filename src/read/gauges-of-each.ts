import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** psi at the low and at the high side of a machine that runs. Common practice, no source. */
const lowSide = [10, 260] as const;
const highSide = [90, 700] as const;

function within(value: number, [low, high]: readonly [number, number]): boolean {
  return value >= low && value <= high;
}

function bare(draft: Draft): boolean {
  return (
    draft.unit === undefined &&
    draft.named === undefined &&
    draft.hint === undefined &&
    draft.place === undefined &&
    draft.points === undefined &&
    draft.rating === undefined
  );
}

/** Two figures over a stroke right behind the circuit that they belong to. */
function ofCircuit(items: readonly Item[], left: Draft, right: Draft | undefined): boolean {
  const machine = items[left.index - 1];
  return (
    right !== undefined &&
    right.index === left.index + 2 &&
    items[left.index + 1]?.text === "/" &&
    machine?.kind === itemKind.subject &&
    /^(?:circuit|system|stage) /.test(machine.subject ?? "") &&
    bare(left) &&
    bare(right) &&
    right.before.length === 0
  );
}

/** "ckt A 118/345 ckt B 64/210": suction over head of one circuit after the other. */
export function gaugesOfEach(items: readonly Item[], drafts: readonly Draft[]): void {
  const pairs = drafts.flatMap((left, order) => {
    const right = drafts[order + 1];
    return right !== undefined && ofCircuit(items, left, right) ? [[left, right] as const] : [];
  });
  const fit = pairs.every(
    ([left, right]) =>
      within(left.value, lowSide) &&
      within(right.value, highSide) &&
      right.value > left.value * 1.3,
  );
  if (pairs.length < 2 || !fit) return;
  for (const [left, right] of pairs) {
    left.named = "pressure";
    left.place = "suction";
    right.named = "pressure";
    right.place = "discharge";
  }
}
