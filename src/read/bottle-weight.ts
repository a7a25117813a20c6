import type { UnitHabit } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind, wordsFrom } from "./item.ts";
import { takeFor } from "./recast.ts";

/** What a cylinder of refrigerant stands at on a scale, lb and kg; common practice, no source. */
const weights: Readonly<Record<UnitHabit, readonly [number, number]>> = {
  us: [1, 250],
  si: [0.5, 110],
};
/** So many cylinders are told apart by their numbers at most. Our choice, no source. */
const mostBottles = 12;
const bottle =
  /\b(?:bottle|jug|cylinder|drum)(?: '?s)?((?: \d{1,2}(?= ))?(?: is| start(?:s|ed|ing)?| begins| says| reads| shows| was| weighs| sits| now| down| to| at)*)(?: [\d.]+ now)?$/;
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

const numbered =
  /(?<!\b(?:\d(?:st|nd|rd|th)|next|second|third|fourth) )\b(?:bottle|jug|cylinder|cyl|tank|drum)(?: \d{1,2})?(?: is| starts?| started| begins| says| reads| weighs| sits| now| down| to| at)*$/;

/** "42 lb in, bottle 1 16.2 bottle 2 at 9.8": what each bottle stands at, and no gas that went in. */
export function ownWeight(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (draft.quantity !== "mass" || draft.action === undefined || draft.ownUnit) continue;
    const words = wordsFrom(items, Math.max(0, draft.index - 5), draft.index);
    // "2nd bottle +2.3" went in
    const plus = items[draft.index]?.text.startsWith("+") || items[draft.index - 1]?.text === "+";
    if (!plus && numbered.test(words)) draft.action = undefined;
  }
}

/** "two bottles, 9.1 and 8.45": as many weights as bottles were counted, of the gas that is in hand. */
export function bottlesRow(
  drafts: readonly Draft[],
  items: readonly Item[],
  { units, action, readings }: Context,
): void {
  const at = items.findIndex(({ text }) => bottles.test(text));
  const count = items[at - 1];
  if (at < 1 || count?.kind !== itemKind.number) return;
  const row = drafts.filter(({ index, gone }) => index > at && !gone);
  if (row.length !== count.value || row.length < 2) return;
  const [least, most] = weights[units];
  const bare = row.every(
    ({ unit, quantity, named, points, place, rating, over, value }) =>
      [unit, quantity, named, points, place, rating].every((one) => one === undefined) &&
      !over &&
      value >= least &&
      value <= most,
  );
  // whole figures may be their numbers: "two bottles, 12 and 14"
  if (!bare || row.every(({ value }) => Number.isInteger(value))) return;
  const told = row.find((one) => one.action !== undefined)?.action;
  const before = action ?? readings.findLast((one) => one.action !== undefined)?.action;
  for (const draft of row) {
    takeFor(draft, "mass", units === "si" ? "kg" : "lb");
    const way = told ?? before;
    if (way !== undefined) draft.action = way;
  }
}

const bottles = /^(?:bottles|jugs|cylinders|cyls|tanks|drums|cans)$/;
