import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { takeFor } from "./recast.ts";

const transformer = /^(?:tap|taps|tapped|transformer|xfmr|xformer|trafo|secondary|sec)$/;
/** V that a control transformer gives; common practice, no source. */
const least = 18;
const most = 34;

/** "the 208 tap reads 24.1 out": what a transformer gives, no weather. */
export function tapOut(drafts: readonly Draft[], items: readonly Item[]): void {
  if (!items.some(({ text, kind }) => kind !== itemKind.number && transformer.test(text))) return;
  for (const draft of drafts) {
    if (draft.gone || draft.unit !== undefined || draft.points !== undefined) continue;
    if (draft.value < least || draft.value > most) continue;
    if (items[draft.index + 1]?.text !== "out") continue;
    if (draft.place !== undefined && draft.place !== "outdoor_air") continue;
    // "its 31 out": the day
    if (/^(?:its|it|is)$/.test(items[draft.index - 1]?.text ?? "")) continue;
    takeFor(draft, "voltage", "V");
    draft.place = undefined;
  }
}
