import { isPreposition, isStrongBreak, isWeakBreak } from "./breaks.ts";
import { classOf } from "./carrier.ts";
import {
  classesOf,
  type Gap,
  goesLeft,
  isVerb,
  measures,
  pastThenNow,
  plateBehind,
  ratedOnIt,
  ratedThenReads,
  strangeTo,
} from "./goes-left.ts";
import { groundThenOver } from "./ground-then-over.ts";
import { type Item, itemKind } from "./item.ts";
import { nounOf } from "./subject-noun.ts";
import { firstOfHeats, secondOfHeats, sidesBehind } from "./turned-clause.ts";
import { role } from "./word.ts";

function skipArticles(items: readonly Item[], i: number): number {
  let at = i;
  while (
    (items[at]?.roles ?? 0) & (role.article | role.all | role.each) &&
    classOf(items[at]) === ""
  )
    at++;
  return at;
}

/** First item of the gap that belongs to the value behind it. */
export function cut(gap: Gap): number {
  const { items, from, to } = gap;
  for (let i = from; i < to; i++) {
    const item = items[i];
    if (item !== undefined && isStrongBreak(item)) return unitSentence(items, i, to);
  }
  for (let i = from; i < to; i++) {
    const item = items[i];
    if (item !== undefined && isWeakBreak(item)) return weakCut(gap, i);
  }
  return smoothCut(gap, to);
}

/** "Ten minutes 24. Meg. So …": a sentence of a unit alone belongs to the numbers before it. */
function unitSentence(items: readonly Item[], at: number, to: number): number {
  const unit = items[at + 1];
  const end = items[at + 2];
  if (unit?.kind !== itemKind.unit || at + 2 > to) return at;
  return end !== undefined && isStrongBreak(end) ? at + 2 : at;
}

/** At a comma or "and", labels before it stay left unless they are the next value's own. */
function weakCut(gap: Gap, at: number): number {
  const stop = smoothCut(gap, at);
  return stop < at && verbAhead(gap, stop, at) ? stop : at;
}

function verbAhead(gap: Gap, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (isVerb(gap.items[i])) return true;
  return false;
}

/** "no voltage on L1 L2-L3 598": what there is none of is told with the word that says so. */
function behindNo({ items, left, from }: Gap, to: number): number {
  const no = items[left.index];
  const next = items[from];
  if (no?.kind !== itemKind.word || no.text !== "no" || from >= to) return from;
  const named = next?.kind === itemKind.unit || next?.label?.quantity !== undefined;
  return named || /^(?:power|juice)$/.test(next?.text ?? "") ? from + 1 : from;
}

const verbs = /^(?:saw|got|hit|hits|ran|runs|had|see|seen|say|says|sees|took|gets|get|made|its)$/;

/** "evap -8", "rise is 62": a name that is no label of its own leads the figure. */
function ledByName(items: readonly Item[], at: number): boolean {
  if (/^(?:evap|cond)$/.test(items[at - 1]?.text ?? "")) return true;
  const joint = /^(?:is|was|of|[=:])$/.test(items[at - 1]?.text ?? "");
  return items[at - (joint ? 2 : 1)]?.text === "rise";
}

/**
 * "ldt 231 shell 178 oil 141": letters that we have no word for lead the first figure as names lead the others,
 * where the last has none behind it.
 */
function ledByLetters(items: readonly Item[], at: number): boolean {
  const [name, before] = [items[at - 1], items[at - 2]];
  if (name?.kind !== itemKind.word || name.roles !== 0 || name.label !== undefined) return false;
  if (!/^[a-z]{2,4}$/.test(name.text) || verbs.test(name.text) || name.owner !== undefined)
    return false;
  if (before !== undefined && !isStrongBreak(before) && !isWeakBreak(before)) return false;
  return items.at(-1)?.kind === itemKind.number;
}

/** Without a break: leading labels go left where a preposition or the habit of the sentence says so. */
function smoothCut(gap: Gap, to: number): number {
  const { items, left } = gap;
  // "evap -8°C cond 38°C suction line 5": a coil's name leads its figure as a place does
  const coil = ledByName(items, left.index) || ledByLetters(items, left.index) ? "L" : "";
  const mine = classesOf(items, left.before) + coil;
  let at = behindNo(gap, to);
  let taken = at > gap.from ? classOf(items[at - 1]) : "";
  for (;;) {
    const preposition = leadsByPreposition(items, at, to);
    const next = preposition ?? nextCarrier(items, at, to);
    if (next === undefined) return at;
    const kind = classOf(items[next]);
    if ((kind === "G" && groundThenOver(gap, next)) || strangeTo(gap, next)) return at;
    // "14.5 on a full load of 15.6": what the rating is stands behind it
    if (kind === "R" && ofNumber(items, next)) return at;
    if (kind === "R" && /^(?:against|vs|versus)$/.test(items[next - 1]?.text ?? "")) return at;
    if (plateBehind(gap, next, mine)) {
      at = next + 1;
      continue;
    }
    const rail = kind === "P" && preposition !== undefined && items[next - 1]?.text === "to";
    // "sags to 178 when the comp kicks on": how and when
    const when = kind === "C" && items[next]?.text === "when";
    if (when) return next + 1;
    const told =
      kind === "C" ? toldCondition(gap, next) : mine.includes(kind) || taken.includes(kind);
    if (told && !rail) return at;
    if (kind === "S" && preposition !== undefined && nextMachine(gap, next)) return at;
    // "charged 5 in suct 119": in goes with the charging
    if (preposition !== undefined && items[at]?.text === "in" && mine.includes("A")) return at;
    if (kind === "E" && pastThenNow(gap, next)) {
      taken += kind;
      at = next + 1;
      continue;
    }
    if (kind === "R" && next === gap.from && ratedThenReads(items, next)) {
      taken += kind;
      at = next + 1;
      continue;
    }
    // "9 superheat and 12 subcooling bus's 616"
    if (next === gap.from && secondOfHeats(items, left.index, next)) {
      taken += kind;
      at = next + 1;
      continue;
    }
    if (isVerb(items[next])) return at;
    const heat = preposition === undefined ? heatSide(gap, next) : undefined;
    if (heat === "right") return at;
    if (heat === "left" && !mine.includes("Q") && !taken.includes("Q")) {
      taken += kind;
      at = next + 1;
      continue;
    }
    if (kind === "R" && (taken.includes("C") || plateAhead(items, next, to))) return at;
    if ((kind === "L" || kind === "Q") && left.before.length > 0 && moves(items[next + 1]))
      return at;
    const verb = isVerb(items[next + 1]) && !ownVerb(items[next + 1]);
    if (verb && !measures(items[next + 1]) && !ownLabel(gap, next, preposition)) return at;
    if (kind === "R" && ratedOnIt(items, next)) return at;
    if (kind === "R" && measures(items[next + 1]) && next === gap.from) {
      taken += kind;
      at = next + 1;
      continue;
    }
    if (
      kind === "R" &&
      items[next]?.label?.plate !== true &&
      items[next]?.label?.quantity !== "current"
    )
      return at;
    if (preposition === undefined && !goesLeft(gap, next, kind, taken)) return at;
    taken += kind;
    at = next + 1;
  }
}

const countedNoun = (item: Item | undefined): string | undefined =>
  item?.subject !== undefined && / \w{1,2}$/.test(item.subject) ? nounOf(item.subject) : undefined;

/** "comp 1 superheat 12 amps 14 on comp 2 superheat 9": where the first machine was named ahead, so is the next of its kind. */
function nextMachine({ items, left, leading, to }: Gap, next: number): boolean {
  const noun = countedNoun(items[next]);
  if (noun === undefined || !leading.includes("S") || items[to]?.kind !== itemKind.number)
    return false;
  const last = items.findLast((item, at) => at < left.index && countedNoun(item) !== undefined);
  return countedNoun(last) === noun && last?.subject !== items[next]?.subject;
}

/** "81 outside supply air's 61": the verb is of the name that it is joined to. */
function ownVerb(item: Item | undefined): boolean {
  return item?.kind === itemKind.label && item.apostrophe && (item.roles & role.is) === 0;
}

function ofNumber(items: readonly Item[], next: number): boolean {
  const value = items[next + 2];
  return items[next + 1]?.text === "of" && value?.kind === itemKind.number;
}

/** "1,38 SH 10K", "6 K SC oil 41°C": superheat and subcooling go with the one of both figures that has kelvins. */
function heatSide({ items, left, to }: Gap, next: number): "left" | "right" | undefined {
  if (sidesBehind(items, left.index, next)) return "left";
  if (!/^(?:superheat|subcooling)$/.test(items[next]?.label?.quantity ?? "")) return undefined;
  if (firstOfHeats(items, left.index, next)) return "left";
  const kelvins = ({ unit }: Item): boolean => /^(?:K|kilohm)$/.test(unit?.figure ?? "");
  const [here, there] = [items[left.index], items[to]];
  if (here === undefined || there === undefined || kelvins(here) === kelvins(there))
    return undefined;
  return kelvins(here) ? "left" : "right";
}

/** "starts 94 A peak at start": the state and which of its figures are two conditions. */
function toldCondition({ items, left, from, to }: Gap, next: number): boolean {
  const { state, stat, kind } = items[next]?.label ?? {};
  // "dips to 439 min on start": said twice, where it does not lead the next figure
  const again = next + 1 < to && stat !== undefined;
  const same = (index: number): boolean => {
    const label = items[index]?.label;
    if (classOf(items[index]) !== "C" || label === undefined) return false;
    return (
      (state !== undefined && label.state !== undefined) ||
      (stat !== undefined && label.stat !== undefined && !(again && label.stat === stat)) ||
      (kind !== undefined && label.kind !== undefined)
    );
  };
  for (let i = from; i < next; i++) if (same(i)) return true;
  return left.before.some(same);
}

/** "5.6 a fla on tag 6.2": what the plate says stands behind it. */
function plateAhead(items: readonly Item[], next: number, to: number): boolean {
  if (items[next]?.label?.quantity !== "current") return false;
  const at = isPreposition(items[next + 1]) ? skipArticles(items, next + 2) : next + 1;
  return items[at]?.label?.plate === true && at + 1 === to && items[to]?.kind === itemKind.number;
}

/** "25.7 vac bus bled down to 3", "sh 12 head came up to 310": that of which something moves begins anew. */
function moves(item: Item | undefined): boolean {
  return item !== undefined && (item.roles & role.change) !== 0;
}

/** "129 on the low side ambient's 88": the verb is the next label's own. */
function ownLabel({ items }: Gap, next: number, preposition: number | undefined): boolean {
  // "dry bulb 63 wet bulb supply's 56"
  const behind = items[next + 1];
  const bulb = items[next]?.label?.quantity === "wet_bulb_temperature";
  if (bulb && behind?.kind === itemKind.label && behind.apostrophe) return true;
  return preposition !== undefined && items[next + 1]?.kind === itemKind.label;
}

/** "on L2", "at the suction", "of superheat": index of the carrier, if a preposition leads to one. */
function leadsByPreposition(items: readonly Item[], from: number, to: number): number | undefined {
  if (!isPreposition(items[from]) || classOf(items[from]) !== "") return undefined;
  const at = skipArticles(items, from + 1);
  return at < to && classOf(items[at]) !== "" ? at : undefined;
}

function nextCarrier(items: readonly Item[], from: number, to: number): number | undefined {
  const at = skipArticles(items, from);
  return at < to && classOf(items[at]) !== "" ? at : undefined;
}
