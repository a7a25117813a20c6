import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { role } from "./word.ts";

/** "standing pressure at 75 F is 160": between the word and its figure stands how warm it was. */
export function pressureAtWarmth(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.unit?.dimension !== "temperature" || right.unit !== undefined) return;
    if (right.named !== undefined || right.place !== undefined || right.points !== undefined)
      return;
    const told = left.before.some((index) => items[index]?.label?.quantity === "pressure");
    if (!told || ((items[right.index - 1]?.roles ?? 0) & role.is) === 0) return;
    if (left.named === "pressure") left.named = undefined;
    right.named = "pressure";
    right.hint = undefined;
    const next = list[order + 1];
    if (next?.rating === "expected" && next.unit === undefined) next.named ??= "pressure";
  });
}
