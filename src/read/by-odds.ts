import { againstOdds, noMeasurement, type Weighed } from "./against-odds.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { habitUnit } from "./habit.ts";
import { type Item, itemKind } from "./item.ts";
import { fits } from "./kinds.ts";
import type { Note } from "./note.ts";
import {
  isPlaced,
  kindName,
  likeliest,
  likeliestKind,
  likeliestPlace,
  likelihood,
  likelihoodAt,
  noOdds,
  type Odds,
  oddsOf,
} from "./odds/odds.ts";
import { type Looked, look } from "./odds/traits.ts";

/** From here on a bare number is taken for what such numbers were in the labelled notes. */
const SURE = 0.9;
/** From here on it is taken for no measurement at all, against what a rule has made of it. */
const NO_MEASUREMENT = 0.95;
/** Below this what a rule has made of it is hardly ever so. */
const HARDLY = 0.01;

/** Nothing but figures, in a row or each with its points: what they are is asked. */
function figuresAlone(items: readonly Item[]): boolean {
  return items.every(
    ({ kind, text }) =>
      kind === itemKind.number ||
      kind === itemKind.points ||
      /^(?:,|\/|\.|and|&|all|each|both)$/.test(text),
  );
}

/**
 * May the odds say what this number is? What is measured in two ways at the place that was said
 * ("liquid 150": psi or F) is asked, and so are a loose pair of numbers and a zero in words.
 */
function isOpen(draft: Draft, item: Item): boolean {
  return (
    draft.quantity === undefined &&
    draft.question === undefined &&
    draft.action === undefined &&
    draft.place === undefined &&
    !draft.same &&
    !draft.zero &&
    !item.loose &&
    !(item.spoken && item.value === 0)
  );
}

/** Inches of water that a duct has at most: "esp .7 blower 6.4" has none. Common practice, no source. */
const mostInches = 5;

function beyondDuct({ value, unit }: Draft, { units }: Context): boolean {
  return unit === undefined && units === "us" && Math.abs(value) > mostInches;
}

const noRoom = /^(?:stage|circuit|compressor|system|fan|pump) /;

/** "su 128 di 361", "hd 388 b4 hose, 331 aftr": no rule knows it, but such numbers have always been this. */
function fill(draft: Draft, odds: Odds, drafts: readonly Draft[], context: Context): void {
  const [quantity, sure] = likeliest(odds);
  if (sure < SURE || quantity === "none" || quantity === "ask") return;
  if (quantity === "mass" || quantity === "fault_code") return;
  if (quantity === "static_pressure" && beyondDuct(draft, context)) return;
  if (draft.unit !== undefined && !fits(quantity, draft.unit.dimension)) return;
  // "cooling 72, heating 68": measured, or set like the one before it?
  if (drafts.some((other) => other.quantity === quantity && other.rating !== undefined)) return;
  draft.quantity = quantity;
  habitUnit(draft, context, []);
  if (draft.unit === undefined) {
    const like = drafts.find(
      (other) => other !== draft && !other.gone && other.quantity === quantity,
    );
    draft.unit = like?.unit;
    draft.assumedUnit = like !== undefined;
  }
  if (draft.unit === undefined) {
    draft.quantity = undefined;
    return;
  }
  const at = draft.place ?? likeliestPlace(odds, quantity)[0];
  // "stage 1 is 72": a part of a machine holds no room's air
  if (at === "indoor_air" && noRoom.test(draft.subject ?? "")) {
    draft.quantity = undefined;
    if (!draft.ownUnit) draft.unit = undefined;
    return;
  }
  draft.assumedQuantity = true;
  draft.place = at;
}

const severals = /^(?:fans|pumps|heaters|blowers|motors|elements)$/;

/** "fans .85 .9 .85" behind ohms: one of each, and as well amps as what their windings have. */
function ofSeveral(items: readonly Item[], index: number): boolean {
  let at = index - 1;
  while (items[at]?.kind === itemKind.number || items[at]?.text === ",") at--;
  const row =
    items[index - 1]?.kind === itemKind.number || items[index + 1]?.kind === itemKind.number;
  const head = items[at];
  return (
    row &&
    (severals.test(head?.text ?? "") || (head?.plural === true && /^(?:evap|cond)/.test(head.text)))
  );
}

/** "58 percent humidity": a word right behind the number says what was measured. */
function namedBehind({ index, quantity }: Draft, items: readonly Item[]): boolean {
  if (quantity === "relative_humidity") return true;
  return items[index + 1]?.label?.quantity === quantity && quantity !== undefined;
}

/** "two fourteen and two sixteen are hot": how rooms are, no figure that was read. */
function toldHow(items: readonly Item[]): boolean {
  const how =
    /^(?:hot|warm|cold|cool|cooler|warmer|freezing|roasting|stuffy|out|down|off|fine|okay|ok)$/;
  return items.some(
    ({ kind, unit }, i) =>
      kind === itemKind.number &&
      unit === undefined &&
      /^(?:is|are|was|were)$/.test(items[i + 1]?.text ?? "") &&
      how.test(items[i + 2]?.text ?? ""),
  );
}

/** "found 2 blown fuses": neither a word nor a unit says that it was measured, and such numbers never were. */
function drop(weighed: Weighed, drafts: readonly Draft[], context: Context): void {
  const { draft, odds } = weighed;
  if (draft.quantity === undefined || draft.named !== undefined || draft.quantity === "mass")
    return;
  // what has its unit was read off something
  if (draft.ownUnit) return;
  const told = draft.rating ?? draft.points ?? draft.place;
  if (told !== undefined || !Number.isNaN(draft.high)) return;
  // one of several like it, or what goes on with the test in hand
  const like = (other: Draft): boolean => other !== draft && other.quantity === draft.quantity;
  if (drafts.some(like)) return;
  if (context.readings[context.readings.length - 1]?.quantity === draft.quantity) return;
  const [quantity, sure] = likeliest(odds);
  if (quantity !== "none" || sure < NO_MEASUREMENT) return;
  if (likelihood(odds, draft.quantity) > HARDLY) return;
  noMeasurement(weighed);
}

/** "suct line 48F @ 119psi": where it was measured, if no word beside it says so. */
function place(draft: Draft, odds: Odds): void {
  const { quantity } = draft;
  if (draft.gone || draft.place !== undefined || draft.rating !== undefined) return;
  if (quantity === undefined || !isPlaced(quantity)) return;
  const [at, sure] = likeliestPlace(odds, quantity);
  if (at !== undefined && sure > SURE && likelihoodAt(odds, quantity, undefined) < HARDLY)
    draft.place = at;
}

/** What a number is for those behind it: what it was read as, or what is likeliest where that is doubtful. */
function kindOf({ quantity, place }: Draft, odds: Odds): string {
  return quantity !== undefined && likelihood(odds, quantity) > 0.05
    ? kindName(quantity, place)
    : likeliestKind(odds);
}

/** The numbers of the note with their odds; none is reckoned behind the last that is in doubt. */
function weigh(drafts: readonly Draft[], looked: Looked): readonly Weighed[] {
  const out: Weighed[] = [];
  const lastInDoubt = Math.max(...drafts.filter(inDoubt).map(({ index }) => index));
  let before = "^";
  for (const [at, item] of looked.items.entries()) {
    if (item.kind !== itemKind.number) continue;
    const draft = drafts.find(({ index, gone }) => index === at && !gone);
    if (draft === undefined) {
      before = "none";
      continue;
    }
    const odds = at > lastInDoubt ? noOdds : oddsOf(looked, at, before);
    out.push({ draft, item, odds });
    if (at < lastInDoubt) before = kindOf(draft, odds);
  }
  return out;
}

/** Will the technician be asked about it, whatever the odds of the others? */
function asked({ draft, item, odds }: Weighed): boolean {
  if (draft.question !== undefined) return true;
  if (draft.quantity !== undefined || draft.same || draft.over || draft.zero) return false;
  const [quantity, sure] = likeliest(odds);
  if (likelihood(odds, "none") > 0.5) return false;
  return !isOpen(draft, item) || quantity === "ask" || quantity === "mass" || sure < SURE;
}

/** Is there anything about it that the odds could change? */
function inDoubt({ gone, question }: Draft): boolean {
  return !gone && question === undefined;
}

/**
 * The second opinion: what such a number, so written and among such words, was in the labelled notes.
 * It speaks where no rule knows a number, against a rule where such a number was never so, and for places.
 * Where a question is asked anyway nothing is guessed: its answer settles the whole message.
 */
export function byOdds(drafts: readonly Draft[], note: Note): void {
  const { items, context } = note;
  if (!drafts.some(inDoubt)) return;
  if (figuresAlone(items) || items[items.length - 1]?.text === "?") return;
  const list = weigh(drafts, look(items, context));
  const guess = !list.some(asked) && !toldHow(items);
  for (const weighed of list) {
    const { draft, item, odds } = weighed;
    const was = [draft.quantity, draft.place, draft.gone].join();
    const behind = namedBehind(draft, items);
    // "used 1 dual cap": a word behind it may be a thing that was counted
    if (!behind || likeliest(odds)[0] === "none") againstOdds(weighed, list, drafts, note);
    if (behind) continue;
    if (!isOpen(draft, item)) drop(weighed, drafts, context);
    else if (guess && !ofSeveral(items, draft.index)) fill(draft, odds, drafts, context);
    place(draft, odds);
    if ([draft.quantity, draft.place, draft.gone].join() === was) continue;
    const [quantity, sure] = likeliest(odds);
    note.trace.push(`<odds> ${item.text}: ${quantity} ${sure.toFixed(2)}`);
  }
}
