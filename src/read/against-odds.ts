import type { QuantityName } from "../quantities/list.ts";
import { isStrongBreak } from "./breaks.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { habitUnit } from "./habit.ts";
import { type Item, itemKind } from "./item.ts";
import { fits, quantityOf } from "./kinds.ts";
import { canonical } from "./make.ts";
import type { Note } from "./note.ts";
import {
  isKnown,
  isPlaced,
  likeliest,
  likeliestPlace,
  likelihood,
  type Named,
  type Odds,
} from "./odds/odds.ts";

/**
 * From `AGAINST` on, what such numbers have been stands against what a rule has made of one, where that
 * has been so less often than `NEVER`. Measured on 1,717 notes that neither the rules nor the table had
 * seen, 770 of them kept because they were misread: read wrongly without a question 425, so 323.
 */
const AGAINST = 0.98;
const NEVER = 0.02;

/** A value on its way to a reading, the number it was typed as, and what such numbers have been. */
export interface Weighed {
  readonly draft: Draft;
  readonly item: Item;
  readonly odds: Odds;
}

/** Takes a number out: no measurement at all. */
export function noMeasurement({ draft, item }: Weighed): void {
  draft.gone = true;
  item.owner = "<no measurement>";
}

/** "12.1 L2-L3 12.2 ohms": is its unit said for it, beside it or behind its row? */
function isUnitSaid({ index, unit, ownUnit }: Draft, items: readonly Item[]): boolean {
  if (unit === undefined || ownUnit) return ownUnit;
  for (let at = index + 1; at < items.length; at++) {
    const item = items[at];
    if (item === undefined || isStrongBreak(item)) return false;
    if (item.unit !== undefined) return item.unit === unit;
  }
  return false;
}

/** "suct line 58", "SC: 9", "hertz 88": the word right before it says what it is. */
function isNamedBefore({ index, quantity }: Draft, items: readonly Item[]): boolean {
  let at = index - 1;
  while (/^(?:[:=@]|is|was|are|at|of|now|'s)$/.test(items[at]?.text ?? "")) at--;
  const { label, unit, kind } = items[at] ?? {};
  if (quantity === undefined) return false;
  // "hertz 88 suction 118"
  if (kind === itemKind.unit && unit !== undefined && fits(quantity, unit.dimension)) return true;
  return (label?.quantity ?? label?.hint) === quantity;
}

function isContradicted(odds: Odds, quantity: Named): boolean {
  return likelihood(odds, quantity) < NEVER && likeliest(odds)[1] >= AGAINST;
}

/** "95/342": what its fellow in a pair or a row bears out stands. */
function isBorneOut({ draft }: Weighed, list: readonly Weighed[], items: readonly Item[]): boolean {
  return list.some(({ draft: other, odds }) => {
    if (Math.abs(other.index - draft.index) !== 2 || other.quantity !== draft.quantity)
      return false;
    const between = items[(other.index + draft.index) / 2]?.text ?? "";
    return /^[/,]$/.test(between) && !isContradicted(odds, draft.quantity ?? "none");
  });
}

/** "T1 0.2 T2 0.2 meg": no winding has so many ohms. */
function canBe(draft: Draft, quantity: QuantityName, units: "us" | "si"): boolean {
  const range = quantityOf(quantity).plausible;
  if (range === undefined || draft.unit === undefined) return true;
  const value = canonical({ ...draft, quantity }, draft.value, units);
  return value >= range[0] && value <= range[1];
}

/** The unit of its fellow of one kind in the message, else the one that he uses for it. */
function unitFor(draft: Draft, drafts: readonly Draft[], context: Context): void {
  const fellow = drafts.find(
    (other) => other !== draft && !other.gone && other.quantity === draft.quantity && other.ownUnit,
  );
  draft.unit = fellow?.unit;
  draft.assumedUnit = fellow !== undefined;
  if (draft.unit === undefined) habitUnit(draft, context, []);
}

/**
 * "used 2 45/5 caps", "amps on three are 18": what stood near it made it a reading that such a number
 * among such words has never been. It is what such numbers have been, or is asked about where its
 * unit says otherwise.
 */
export function againstOdds(
  weighed: Weighed,
  list: readonly Weighed[],
  drafts: readonly Draft[],
  { items, context }: Note,
): void {
  const { draft, odds } = weighed;
  const { quantity: was, unit } = draft;
  if (draft.gone || draft.settled || was === undefined || draft.question !== undefined) return;
  // what was put in or taken out, and what corrects another, is told by more than its number
  if (draft.corrects || draft.action !== undefined) return;
  // "comm pair 16,2 at ou-1": the wires' name tells that they are volts, and which
  if (was === "voltage" && draft.kind !== undefined) return;
  if (draft.rating !== undefined || !isKnown(was) || !isContradicted(odds, was)) return;
  if (isNamedBefore(draft, items) || isBorneOut(weighed, list, items)) return;
  const [quantity] = likeliest(odds);
  // of which bulb degrees are is told by a word or not at all
  if (quantity === "wet_bulb_temperature") return;
  if (quantity === "none") {
    // what has its unit was read off something, and what is like the last reading goes on from it
    const goesOn = context.readings[context.readings.length - 1]?.quantity === was;
    if (!isUnitSaid(draft, items) && !goesOn && Number.isNaN(draft.high)) noMeasurement(weighed);
    return;
  }
  const fitting = quantity !== "ask" && (unit === undefined || fits(quantity, unit.dimension));
  if (quantity === "ask" || quantity === "fault_code" || (!fitting && isUnitSaid(draft, items))) {
    draft.question = "quantity";
    return;
  }
  if (fitting && !canBe(draft, quantity, context.units)) return;
  draft.quantity = quantity;
  draft.named = undefined;
  draft.assumedQuantity = true;
  draft.place = isPlaced(quantity) ? likeliestPlace(odds, quantity)[0] : undefined;
  if (fitting && unit !== undefined) return;
  unitFor(draft, drafts, context);
  if (draft.unit === undefined) draft.question = "quantity";
}
