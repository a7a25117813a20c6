import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** "discharge of 219 degrees and suction's 51": behind degrees a suction alone may be either. */
export function degreesThen(drafts: readonly Draft[], items: readonly Item[]): void {
  tooHot(drafts, items);
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

/** "the discharge is 255, way too hot": no gauge is hot. */
function tooHot(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (draft.quantity !== "pressure" || draft.ownUnit || draft.place !== "discharge") continue;
    const behind = items.slice(draft.index + 1, draft.index + 5);
    const hot = behind.findIndex(({ text }) => text === "hot");
    if (hot >= 0 && behind.slice(0, hot).every(({ kind }) => kind === itemKind.word))
      draft.question = "quantity";
  }
}
