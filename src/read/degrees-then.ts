import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "discharge of 219 degrees and suction's 51": behind degrees a suction alone may be either. */
export function degreesThen(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left?.quantity !== "temperature" || left.place !== "discharge" || !left.ownUnit) return;
    if (right.quantity !== "pressure" || right.place !== "suction" || right.ownUnit) return;
    if (drafts.filter(({ quantity }) => quantity === "pressure").length > 1) return;
    const label = left.before.map((index) => items[index]);
    const bare = label.some((item) => item?.text === "discharge" && item.to - item.from < 12);
    if (bare && right.value >= 25 && right.value <= 90) right.question = "quantity";
  });
}
