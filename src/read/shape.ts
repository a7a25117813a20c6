import type { Draft } from "./draft.ts";

/** P for points, L for a place, S for a subject alone, "" for a bare number. */
export function shapeOf(draft: Draft): string {
  if (draft.points !== undefined || draft.grounded) return "P";
  if (draft.place !== undefined) return "L";
  return draft.subject !== undefined ? "S" : "";
}

/** Values of one row are of one size. */
export function alike(a: Draft, b: Draft): boolean {
  if (a.value === 0 || b.value === 0 || Number.isNaN(a.value) || Number.isNaN(b.value)) return true;
  const ratio = Math.abs(a.value / b.value);
  return ratio > 0.2 && ratio < 5;
}

/** Where the unit stands with the first of a row, the others are of its size. */
export function near(left: Draft, right: Draft): boolean {
  if (left.ownUnit && left.value === 0 && right.value >= 60) return false;
  if (!left.ownUnit || left.value === 0 || right.value === 0) return true;
  const ratio = Math.abs(right.value / left.value);
  return ratio > 0.45 && ratio < 2.2;
}

export function likeBefore(
  list: readonly Draft[],
  order: number,
  shape: string,
): Draft | undefined {
  const draft = list[order];
  for (let i = order - 1; i >= 0; i--) {
    const other = list[i];
    if (draft !== undefined && other?.quantity !== undefined && likeShape(other, draft, shape))
      return other;
  }
  return undefined;
}

export function likeBehind(
  list: readonly Draft[],
  order: number,
  shape: string,
): Draft | undefined {
  const draft = list[order];
  for (let i = order + 1; i < list.length; i++) {
    const other = list[i];
    if (
      draft !== undefined &&
      other?.quantity !== undefined &&
      (other.unit !== undefined || other.assumedQuantity) &&
      likeShape(other, draft, shape)
    )
      return other;
  }
  return undefined;
}

export function isPair(draft: Draft): boolean {
  const points = draft.points?.[0];
  return (
    points !== undefined &&
    points.length === 2 &&
    !points.includes("ground") &&
    !points.includes("N")
  );
}

function likeShape(a: Draft, b: Draft, shape: string): boolean {
  if (a.after !== undefined && b.after !== undefined) return true;
  if (shapeOf(a) !== shape || a.rating !== undefined) return false;
  if (shape !== "P") return true;
  return isPair(a) === isPair(b) && sameRow(a, b);
}

/** "L1" and "T1" are of one row only with their like. */
export function family(draft: Draft): string {
  return (draft.points?.[0] ?? []).map((point) => point.replace(/ ?(?:\d|[A-C])$/, "")).join(" ");
}

/** A quantity word earlier in the message, the nearest value's own. */
export function wordBefore(list: readonly Draft[], order: number): Draft | undefined {
  for (let i = order - 1; i >= 0; i--)
    if (list[i]?.quantity !== undefined && list[i]?.rating === undefined) return list[i];
  return undefined;
}

/** "T1-G 340M. it pulled 19.4 on L1": what was tested at terminals says nothing of a leg in another sentence. */
function sameRow(a: Draft, b: Draft): boolean {
  const [first, second] = [a.points?.[0]?.[0] ?? "", b.points?.[0]?.[0] ?? ""];
  const leg = /^L\d$/;
  // "lead 2 to ground 84 megohm, volts 461 459 433 L1 22.4": a leg of the supply has no insulation of its own
  const tested = a.quantity === "insulation_resistance" && !leg.test(first);
  if (tested && b.points?.[0]?.length === 1 && leg.test(second)) return false;
  if (a.sentence === b.sentence) return true;
  return leg.test(first) === leg.test(second);
}
