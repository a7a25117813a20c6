import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const into = /^(?:in|inlet|entering)$/;
const outOf = /^(?:out|outlet|leaving)$/;
/** How many times the one end may show what the other does. Our choice, no source. */
const apart = 6;

function isBare(draft: Draft, items: readonly Item[]): boolean {
  const { unit, named, hint, place, points, rating, over, same } = draft;
  const free = [unit, named, points, rating].every((one) => one === undefined);
  const weather = place === undefined || place === "outdoor_air" || place === "water_out";
  if (!free || over || same || !weather) return false;
  return (
    (hint === undefined || place !== undefined) && items[draft.index]?.kind === itemKind.number
  );
}

function measured({ unit }: Draft): boolean {
  return unit?.dimension === "pressure" || unit?.dimension === "temperature";
}

/** "26 psi in 41 out", "drier in 38 out 34 °C": both ends of a part, the unit said with one of them. */
export function endsOfPart(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined) return;
    const text = (at: number): string => items[at]?.text ?? "";
    const joint = /^(?:,|and|&)$/.test(text(left.index + 2)) ? 1 : 0;
    const behind =
      into.test(text(left.index + 1)) &&
      outOf.test(text(right.index + 1)) &&
      right.index === left.index + 2 + joint;
    const comma = /^(?:,|and|&)$/.test(text(left.index + 1)) ? 1 : 0;
    const ahead =
      into.test(text(left.index - 1)) &&
      outOf.test(text(right.index - 1)) &&
      right.index === left.index + 2 + comma;
    if (!behind && !ahead) return;
    const [known, other] = measured(left) ? [left, right] : [right, left];
    if (!measured(known) || !isBare(other, items)) return;
    const ratio = other.value / known.value;
    if (!(ratio > 1 / apart && ratio < apart)) return;
    other.unit = known.unit;
    other.assumedUnit = true;
    other.named = known.named;
    other.hint = known.unit?.dimension === "temperature" ? "temperature" : "pressure";
    if (known.unit?.dimension === "pressure") other.place = known.place;
  });
}
