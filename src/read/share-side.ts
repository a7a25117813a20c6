import type { Draft } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import { between } from "./relate.ts";

const sides: ReadonlySet<string> = new Set([
  "suction",
  "discharge",
  "liquid",
  "oil",
  "evaporator_out",
  "condenser_out",
]);

/** "250 psig liquid 98 F": between the two stands nothing but the place that both are of. */
function placeBetween(items: readonly Item[], left: Draft, right: Draft): boolean {
  return (
    right.index === left.index + 2 &&
    left.unit !== undefined &&
    right.ownUnit &&
    items[left.index + 1]?.label?.place === left.place
  );
}

/** "liquid 328 psig and 100 F at the outdoor": where the gauge hangs, not the weather. */
function atOutdoorUnit(items: readonly Item[], left: Draft, right: Draft): boolean {
  return (
    right.place === "outdoor_air" &&
    left.place === "liquid" &&
    items[left.index + 1]?.text === "and" &&
    /^at(?: the)? outdoor(?! (?:air|temp))/.test(wordsFrom(items, right.index + 1, right.index + 4))
  );
}

/** "95 psi, suction line 50, 300 psi, liquid line 90": a gauge without a name goes with the line behind it. */
function ofNextLine(
  list: readonly Draft[],
  items: readonly Item[],
  [left, right]: readonly [Draft, Draft],
): boolean {
  if (left.quantity !== "pressure" || left.unit === undefined) return false;
  // "freezer on R-449A, 29 psi": no gauge hangs in the box
  if (left.place !== undefined && left.place !== "box") return false;
  if (right.place !== "suction" && right.place !== "liquid") return false;
  if (items[left.index + 1]?.text !== "," || !right.before.includes(left.index + 2)) return false;
  return !list.some(
    (one) => one !== left && one.quantity === "pressure" && one.place === right.place,
  );
}

/** "106 psig / 77 F at the suction", "suction 97 psi 49 F": pressure and temperature of one place. */
export function shareSide(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || left.rating !== undefined || right.rating !== undefined) return;
    const paired = list[order - 2];
    if (
      right.quantity === "pressure" &&
      paired?.quantity === "pressure" &&
      paired.place === left.place &&
      left.place !== undefined
    )
      return;
    // "128 psig / 53 F, 340 psig / 94 F liquid": each stroke holds a pair of its own
    if (
      right.quantity === "pressure" &&
      paired?.quantity === "pressure" &&
      items[paired.index + 1]?.text === "/" &&
      items[right.index + 1]?.text === "/"
    )
      return;
    const kinds = `${left.quantity} ${right.quantity}`;
    if (kinds !== "pressure temperature" && kinds !== "temperature pressure") return;
    const gap = between(items, left, right);
    if (placeBetween(items, left, right) && left.place !== undefined && sides.has(left.place))
      right.place ??= left.place;
    if (atOutdoorUnit(items, left, right)) right.place = left.place;
    // "liquid line 87 F at the condenser, 347 psig there"
    const there = items[right.index + 1]?.text === "there" && right.before.length === 0;
    if (there && left.place !== undefined && sides.has(left.place)) right.place ??= left.place;
    if (ofNextLine(list, items, [left, right])) {
      left.place = right.place;
      return;
    }
    if (!gap.list && !gap.empty) return;
    if (
      left.place === undefined &&
      right.place !== undefined &&
      sides.has(right.place) &&
      right.before.length === 0 &&
      left.before.length === 0
    )
      left.place = right.place;
    else if (
      right.place === undefined &&
      left.place !== undefined &&
      sides.has(left.place) &&
      right.before.length === 0 &&
      !strongIn(items, left, right)
    )
      right.place = left.place;
  });
}

export function strongIn(items: readonly Item[], left: Draft, right: Draft): boolean {
  return between(items, left, right).strong;
}
