import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import { takeFor } from "./recast.ts";

/** What a cylinder of refrigerant stands at on a scale, lb and kg; common practice, no source. */
const weights: Readonly<Record<UnitHabit, readonly [number, number]>> = {
  us: [1, 250],
  si: [0.5, 110],
};
/** So many cylinders are told apart by their numbers at most. Our choice, no source. */
const mostBottles = 12;
const bottle =
  /\b(?:bottle|jug|cylinder|drum)(?: '?s)?((?: is| says| reads| shows| was| weighs| sits| now| down| to| at)*)(?: [\d.]+ now)?$/;
const nitrogen = /\b(?:n2|nitro\w*|oxygen|o2|acetylene)\b/;

/** "bottle says 10.4", "jug's at 18.2", "bottle 21.6 now 18.2": what the scale shows, no amps and no pressure. */
export function bottleWeight(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  if (nitrogen.test(wordsFrom(items, 0, items.length))) return;
  const [least, most] = weights[units];
  for (const draft of drafts) {
    const told = draft.unit ?? draft.quantity ?? draft.points ?? draft.place ?? draft.rating;
    if (told !== undefined || draft.gone || draft.over) continue;
    if (draft.value < least || draft.value > most) continue;
    const words = wordsFrom(items, Math.max(0, draft.index - 5), draft.index);
    const match = bottle.exec(words);
    if (match === null) continue;
    // "jug 1 gave 18.6 lb": which of them
    if (match[1] === "" && Number.isInteger(draft.value) && draft.value <= mostBottles) continue;
    takeFor(draft, "mass", units === "si" ? "kg" : "lb");
    draft.action = undefined;
  }
}
