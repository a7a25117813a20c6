import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { between } from "./relate.ts";

/** "118 52 F, 123 and 51 F": of a pair the far higher is the pressure again, of the same pipe. */
export function pairAgain(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((left, order) => {
    const right = list[order + 1];
    const [first, second] = [list[order - 2], list[order - 1]];
    if (right === undefined || first === undefined || second === undefined) return;
    if (left.unit !== undefined || left.named !== undefined || left.place !== undefined) return;
    if (right.unit?.dimension !== "temperature" || second.unit?.dimension !== "temperature") return;
    if (first.hint !== "pressure" && first.named !== "pressure") return;
    const gap = between(items, left, right);
    if ((!gap.list && !gap.empty) || left.value < first.value * 0.6) return;
    if (left.value > first.value * 1.67 || left.value < right.value * 1.5) return;
    left.named = "pressure";
    left.place = first.place;
    right.place ??= second.place;
  });
}
