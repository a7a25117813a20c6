import { isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { alive } from "./inherit.ts";
import type { Item } from "./item.ts";

const moves = /^(?:dip|sag|spik|peak|bottom|topp)/;
const joint = /^(?:and|n|&|,|but|then|it|to|at|down|up)$/;

function isBare({ unit, named, hint, points, place, rating }: Draft): boolean {
  return [unit, named, hint, points, place, rating].every((one) => one === undefined);
}

/** Where the verb stands between the two, and beside it nothing but what was said of the first. */
function verbBetween(items: readonly Item[], left: Draft, right: Draft): boolean {
  const between = items.slice(left.index + 1, right.index);
  const verb = between.findIndex((item) => item.label?.stat !== undefined && moves.test(item.text));
  if (verb < 0) return false;
  return between.every(
    (item, at) =>
      !isStrongBreak(item) &&
      (at === verb || joint.test(item.text) || left.behind.includes(left.index + 1 + at)),
  );
}

/** "bus 655 dips to 580", "amps 20, spikes to 61": the same thing at its least or its most. */
export function dipsTo(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = alive(drafts);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || right.over || right.same || !isBare(right)) return;
    // "supply 208 sags to 188": volts of a line, which only the figure tells
    if (left.place === "supply_air") return;
    if (right.stat === undefined || left.rating !== undefined || isBare(left)) return;
    if (!verbBetween(items, left, right)) return;
    right.named = left.named;
    right.hint = left.hint;
    right.place = left.place;
    right.points = left.points;
    right.subject ??= left.subject;
    right.kind ??= left.kind;
    if (left.unit === undefined) return;
    right.unit = left.unit;
    right.assumedUnit = true;
  });
}
