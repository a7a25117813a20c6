import type { Draft } from "./draft.ts";

/**
 * "41.5 bar at 10:15 27 C, 41.4 at 11:45 26 C": pairs of two kinds, the first of the second pair
 * without its unit and near the first of the first: the same gauge, never the other one's unit.
 */
export function pairsAgain(list: readonly Draft[]): void {
  for (let i = 0; i + 3 < list.length; i++) {
    const [first, beside, again, last] = list.slice(i, i + 4);
    if (first === undefined || beside === undefined || again === undefined || last === undefined)
      return;
    const paired =
      first.unit !== undefined &&
      beside.unit !== undefined &&
      first.unit.dimension !== beside.unit.dimension &&
      last.unit?.dimension === beside.unit.dimension;
    const bare =
      again.unit === undefined && again.named === undefined && again.points === undefined;
    const near = again.value / first.value;
    if (!paired || !bare || !(near > 0.9 && near < 1.1)) continue;
    again.named = first.named;
    again.hint = first.hint;
    again.unit = first.unit;
    again.assumedUnit = true;
    again.place ??= first.place;
  }
}
