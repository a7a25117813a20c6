import { isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "okay took three out": gas, though no unit says it; nobody takes degrees out. */
export function tookOut(items: readonly Item[], draft: Draft): void {
  if (
    draft.unit?.dimension === "mass" &&
    draft.rating === undefined &&
    cameOut(items, draft.index)
  ) {
    draft.action ??= "recovered";
    return;
  }
  const [verb, out, end] = [-1, 1, 2].map((step) => items[draft.index + step]);
  if (!/^(?:took|taken|taking|sucked|drew)$/.test(verb?.text ?? "") || out?.text !== "out") return;
  if (draft.unit !== undefined || draft.named !== undefined || draft.points !== undefined) return;
  if (end !== undefined && !isStrongBreak(end) && !/^(?:,|so|and)$/.test(end.text)) return;
  draft.action = "recovered";
  draft.hint = undefined;
  draft.place = undefined;
}

/** "only 3.6 kg came out": so much was recovered. */
function cameOut(items: readonly Item[], index: number): boolean {
  const [verb, out] = [items[index + 1], items[index + 2]];
  return /^c(?:ame|ome|omes)$/.test(verb?.text ?? "") && (out?.text === "out" || isTwo(verb));
}

/** "came out" is one item. */
const isTwo = (item: Item | undefined): boolean =>
  item !== undefined && item.to - item.from > item.text.length;
