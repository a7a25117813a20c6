import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "hd 2 40": 240 heard in two, or what an indoor unit shows; with the number before it what stands behind is asked about. */
export function behindLowHead(drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left?.place !== "discharge" || left.question === undefined || left.unit?.figure !== "psi")
      return;
    if (left.value > 9 || right.index !== left.index + 1 || right.ownUnit) return;
    if (right.before.length === 0 && right.place === "discharge") right.question ??= "quantity";
  });
}

/** F or K between a box and what else its one figure may be at least. Our choice, no source. */
const apart = 5;

/** "box 38 28": one box has one warmth; the second may be its coil, its set point or a gauge, and is asked about. */
export function boxTwice(drafts: readonly Draft[], items: readonly Item[]): void {
  const [left, right, ...more] = drafts.filter(({ gone }) => !gone);
  if (left === undefined || right === undefined || more.length > 0) return;
  if (left.quantity !== "temperature" || right.quantity !== "temperature") return;
  if (items[left.index - 1]?.text !== "box" || left.place !== "box") return;
  if (right.index !== left.index + 1 || right.ownUnit || right.before.length > 0) return;
  const told = right.rating ?? right.after ?? right.series ?? right.question;
  if (told !== undefined || right.behind.length > 0) return;
  if (Math.abs(left.value - right.value) > apart) right.question = "quantity";
}
