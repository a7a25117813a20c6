import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const clock = "at <hour>:<minute>";

/** On the same side of both a time of day: right before them, or right behind. */
function bothTimed(items: readonly Item[], first: number, again: number): boolean {
  return [-1, 1].some(
    (side) => items[first + side]?.owner === clock && items[again + side]?.owner === clock,
  );
}

/**
 * "550 psi at 2pm, 548 at 2:40": what is looked at twice, each time with its hour, is one gauge, where
 * the second has neither name nor unit and is of the size of the first.
 */
export function lookedAgain(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((again, order) => {
    const first = list[order - 1];
    if (first?.unit === undefined && first?.named === undefined && first?.place === undefined)
      return;
    const bare =
      again.unit === undefined &&
      again.named === undefined &&
      again.place === undefined &&
      again.points === undefined &&
      again.rating === undefined;
    const ratio = again.value / first.value;
    if (!bare || first.rating !== undefined || !(ratio > 0.3 && ratio < 3)) return;
    if (!bothTimed(items, first.index, again.index)) return;
    again.unit = first.unit;
    again.assumedUnit = true;
    again.named = first.named;
    again.hint = first.hint;
    again.place = first.place;
    again.points = first.points;
    again.subject ??= first.subject;
    again.kind ??= first.kind;
  });
}
