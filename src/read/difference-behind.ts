import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "75 in 55 out = 20", "return 68 supply 126 so that's 58 degrees": behind the sign stands what lies between the two, not a third temperature. */
export function differenceBehind(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((draft, order) => {
    const [first, second] = [drafts[order - 2], drafts[order - 1]];
    if (first === undefined || second === undefined || draft.named !== undefined) return;
    const told = /^(?:=|so|thats|that's|what|call|makes|its|it's|about|a)$/;
    if (!told.test(items[draft.index - 1]?.text ?? "") || draft.points !== undefined) return;
    const air = (one: Draft): boolean =>
      one.hint === "temperature" || one.unit?.dimension === "temperature";
    if (!air(first) || !air(second)) return;
    if (Math.abs(Math.abs(first.value - second.value) - draft.value) > 0.6) return;
    draft.named = "temperature_difference";
    draft.hint = undefined;
    draft.place = undefined;
  });
}
