import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { recast } from "./recast.ts";

/** F or K between airs of one kind that are told in a row. Our choice, no source. */
const apart = 25;
const joint = /^(?:,|and|&|n)$/;

/** "58 59 57 out of the grille": the place behind the last of a row is that of all of them. */
export function rowBeforePlace(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((last, order) => {
    if (last.gone || last.quantity !== "temperature" || last.place !== "supply_air") return;
    if (last.before.some((index) => items[index]?.label?.place !== undefined)) return;
    if (!last.behind.some((index) => items[index]?.label?.place === "supply_air")) return;
    let right = last;
    for (let at = order - 1; at >= 0; at--) {
      const left = list[at];
      if (left === undefined || left.gone || left.ownUnit || left.rating !== undefined) return;
      const gap = items.slice(left.index + 1, right.index);
      const next = gap.length === 0 || (gap.length === 1 && joint.test(gap[0]?.text ?? ""));
      const bare = left.before.every((index) => items[index]?.kind !== itemKind.label);
      if (!next || !bare || Math.abs(left.value - last.value) > apart || last.unit === undefined)
        return;
      recast(left, "temperature", last.unit.figure);
      left.assumedUnit = true;
      left.question = undefined;
      left.place = "supply_air";
      right = left;
    }
  });
}
