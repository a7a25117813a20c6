import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { fits, quantityOf } from "./kinds.ts";

export function alive(drafts: readonly Draft[]): Draft[] {
  return drafts.filter((draft) => !draft.gone);
}

/** The only value of the message that is not taken, where there is just one. */
export function onlyAlive(drafts: readonly Draft[]): Draft | undefined {
  const [only, ...more] = alive(drafts);
  return more.length === 0 ? only : undefined;
}

export function sameDimension(left: Draft, right: Draft): boolean {
  if (left.unit !== undefined && right.unit !== undefined)
    return left.unit.dimension === right.unit.dimension;
  if (left.unit === undefined && right.unit === undefined) return sameNamed(left, right);
  return !otherKind(left, right) && !otherKind(right, left);
}

function sameNamed(left: Draft, right: Draft): boolean {
  if (left.named === undefined || right.named === undefined) return true;
  const [dimension] = quantityOf(left.named).dimensions;
  return dimension === undefined || fits(right.named, dimension);
}

/** Its name says that it is measured in another kind of unit. */
function otherKind(named: Draft, other: Draft): boolean {
  return (
    named.named !== undefined &&
    named.unit === undefined &&
    other.unit !== undefined &&
    !fits(named.named, other.unit.dimension)
  );
}

/** The second value brings no label of its own that would make it another measurement. */
export function unlabelled(items: readonly Item[], left: Draft, right: Draft): boolean {
  // "14.2 kW, 68 going in": how warm the air is that the heat goes into
  const goes = /^(?:going|coming|entering|leaving|in|out)\b/;
  if (left.unit?.dimension === "power" && goes.test(items[right.index + 1]?.text ?? ""))
    return false;
  // "hpv 38% now 1205": no valve is so far open
  if (left.unit?.dimension === "percent" && right.unit === undefined && right.value > 100)
    return false;
  for (const index of right.before) {
    const item = items[index];
    if (item === undefined) continue;
    if (item.kind === itemKind.points || item.kind === itemKind.subject) return false;
    // "one and two are 300 and three's down to 5": of another point
    if (item.owner === "<row> <value>") return false;
    // "was 82 and it's pulled down to 26": what became of it
    const down = item.label?.quantity === "vacuum" && /^pull/.test(item.text);
    if (down && left.place !== undefined && right.value < left.value) continue;
    if (item.label?.place !== undefined && item.label.place !== left.place) return false;
    if (item.label?.quantity !== undefined && item.label.quantity !== left.named) return false;
    // "rat 70 … mat is 66 now": the air of another place, which we have no name for
    if (
      item.label?.hint === "temperature" &&
      item.label.place === undefined &&
      left.place !== undefined &&
      /^(?:mat|mix|mixed|chw|hhw|oil)$/.test(item.text)
    )
      return false;
    // "low side 58 psi … now 71 and the line is 49"
    const { unit } = left;
    if (
      item.label?.hint !== undefined &&
      unit !== undefined &&
      !fits(item.label.hint, unit.dimension)
    )
      return false;
    if (
      item.label?.rating !== undefined ||
      item.label?.state !== undefined ||
      item.label?.thing !== undefined
    )
      return false;
  }
  return true;
}

/** What the first value said holds for the second where it says nothing itself. */
export function inherit(left: Draft, right: Draft): void {
  if (right.named === undefined && right.hint === undefined) {
    right.named = left.named;
    right.hint = left.hint;
  }
  right.place ??= left.place;
  // "now 470 all three" behind L1-L3: of each, not of that one
  if (right.count === 1 || left.count > 1) right.points ??= left.points;
  right.grounded = right.grounded || (right.points === left.points && left.grounded);
  right.subject ??= left.subject;
  right.kind ??= left.kind;
  right.action ??= left.action;
  right.component = right.component || left.component;
  right.thing ??= left.thing;
  right.state ??= left.state;
  if (right.unit === undefined) right.unit = left.unit;
  if (left.unit === undefined && sameDimension(left, right)) left.unit = right.unit;
}
