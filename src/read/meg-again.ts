import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const repeats =
  /\b(?:again|same (?:meter|tester|voltage|test|leads)|re-?test(?:ed)?|re-?megg?(?:ed)?|repeat(?:ed)?)\b/;
const warmed =
  /\b(?:crankcase |sump |belly |shell )?heat(?:er)?s?(?: \w+){0,2} (?:on|for|all|over)\b|\bafter the (?:crankcase )?heat(?:er)?\b|\b(?:warmed|dried|baked|cooked)\b/;
const otherwise =
  /\b(?:volts?|amps?|psi|legs?|lines?|phases?|runs?|running|suction|head|gauges?)\b/;

/** Said to be of nothing else; the heater that warmed the shell is no part that was measured. */
function isBare({ unit, named, place, points, rating, subject, over }: Draft): boolean {
  const megohms = unit?.dimension === "resistance" && unit.factor >= megohm;
  return (
    [place, points, rating, subject].every((one) => one === undefined) &&
    (unit === undefined || megohms) &&
    (named === undefined || named === "resistance" || named === "insulation_resistance") &&
    !over
  );
}

/** "ran the crankcase heater an hour": the shell was warmed so long. */
function heatedFor(items: readonly Item[]): boolean {
  return items.some(({ text }, at) => {
    if (!/^(?:crankcase|sump|belly|heater|heaters|heat)$/.test(text)) return false;
    return items
      .slice(at + 1, at + 4)
      .some((one) => one.unit?.dimension === "time" || one.text === "overnight");
  });
}

const megohm = 1e6;

/**
 * "heater on overnight, again: 260 260 270" behind "megs 3.1 all three": two or three bare figures in a
 * row, where the test is told done again or the shell warmed for it, are the same leads once more.
 */
export function megAgain(list: readonly Draft[], items: readonly Item[], context: Context): void {
  const last = context.readings[context.readings.length - 1];
  if (last?.quantity !== "insulation_resistance" || last.rating !== undefined) return;
  if (last.over_range === true) return;
  const words = items.map(({ text }) => text).join(" ");
  if (!(repeats.test(words) || warmed.test(words) || heatedFor(items)) || otherwise.test(words))
    return;
  const row = list.filter((draft) => items[draft.index]?.kind === itemKind.number && isBare(draft));
  const first = row[0];
  if (first === undefined || row.length < 2 || row.length > 3) return;
  const joined = row.every((draft, at) => at === 0 || draft.index - (row[at - 1]?.index ?? 0) <= 2);
  if (!joined) return;
  // "last spring it was 1.8 gig": of another day
  const now = context.readings.findLast(
    ({ quantity, earlier }) => quantity === "insulation_resistance" && earlier !== true,
  );
  const unitNow = (now ?? last).figure.unit;
  for (const draft of row) {
    draft.named = "insulation_resistance";
    draft.quantity = "insulation_resistance";
    if (draft.unit === undefined) {
      draft.unit = row.find(({ unit }) => unit !== undefined)?.unit ?? unitCalled(unitNow);
      draft.assumedUnit = true;
    }
    draft.hint = undefined;
    draft.place = undefined;
    draft.lasting = undefined;
    draft.question = undefined;
  }
}

/** "compressor 2 280 all three" behind "compressor 1 all three leads 350 megs": the test goes on, of another machine, or where no supply has such volts. */
export function allThreeAgain(
  list: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const row = context.readings.slice(-3);
  const tested = row.every(
    (one) => one.quantity === "insulation_resistance" && one.rating === undefined,
  );
  const [only, ...others] = list;
  const last = row[2];
  if (only === undefined || others.length > 0 || last === undefined || !tested) return;
  if (only.count !== 3 || only.unit !== undefined || !isBare({ ...only, subject: undefined }))
    return;
  if (context.latest < 3 || row.some(({ value }) => value !== last.value)) return;
  const words = items.map(({ text }) => text).join(" ");
  const another = only.subject !== undefined && only.subject !== last.subject;
  const other = another || /\b(?:second|other|next)\b/.test(words);
  if (otherwise.test(words) || (!other && isSupply(only.value))) return;
  only.named = "insulation_resistance";
  only.quantity = "insulation_resistance";
  only.unit = unitCalled(last.figure.unit);
  only.assumedUnit = true;
  only.points = row.flatMap(({ points }) => (points === undefined ? [] : [points]));
}

/** V of the usual supplies; ANSI C84.1. */
const supplies = [120, 208, 230, 240, 277, 460, 480, 575, 600] as const;
/** How far off its supply a live line is mostly read. Common practice, no source. */
const offSupply = 0.1;

export function isSupply(value: number): boolean {
  return supplies.some((one) => Math.abs(value / one - 1) <= offSupply);
}

/** "holding 202 203 202 at the terminals" behind amps: there the volts of a usual supply are read. */
export function isAtLugs({ quantity }: Reading, value: number, items: readonly Item[]): boolean {
  return (
    quantity === "current" &&
    items.some(({ text }) => /^(?:terminals|lugs|disconnect|line side)$/.test(text)) &&
    isSupply(value)
  );
}

/** "running again, 12.1 12.2 12.0" behind megohms: on a running motor nobody tests them. */
export function isOnDead({ quantity }: Reading, items: readonly Item[]): boolean {
  return (
    (quantity === "insulation_resistance" || quantity === "winding_resistance") &&
    items.some(({ label }) => label?.state === "running")
  );
}
