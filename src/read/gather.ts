import { afterBreak, isPreposition, isStrongBreak, isWeakBreak, lastBreak } from "./breaks.ts";
import { classOf } from "./carrier.ts";
import { carriers } from "./carriers.ts";
import { type Draft, draft } from "./draft.ts";
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
import { namesPlacesBehind, namesPointsBehind } from "./points-behind.ts";
import { namesTimesBehind } from "./times-behind.ts";
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
function cut(gap: Gap): number {
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

/** Without a break: leading labels go left where a preposition or the habit of the sentence says so. */
function smoothCut(gap: Gap, to: number): number {
  const { items, left } = gap;
  const mine = classesOf(items, left.before);
  let at = gap.from;
  let taken = "";
  for (;;) {
    const preposition = leadsByPreposition(items, at, to);
    const next = preposition ?? nextCarrier(items, at, to);
    if (next === undefined) return at;
    const kind = classOf(items[next]);
    if ((kind === "G" && groundThenOver(gap, next)) || strangeTo(gap, next)) return at;
    if (kind === "R" && /^(?:against|vs|versus)$/.test(items[next - 1]?.text ?? "")) return at;
    if (plateBehind(gap, next, mine)) {
      at = next + 1;
      continue;
    }
    const rail = kind === "P" && preposition !== undefined && items[next - 1]?.text === "to";
    // "sags to 178 when the comp kicks on": how and when
    const when = kind === "C" && items[next]?.text === "when";
    if (when) return next + 1;
    if ((mine.includes(kind) || taken.includes(kind)) && !rail) return at;
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
    if (isVerb(items[next])) return at;
    if (isVerb(items[next + 1]) && !measures(items[next + 1]) && !ownLabel(gap, next, preposition))
      return at;
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

/** What goes left of a full stop: behind a comma only points, times and units still speak of the value. */
function sideBehind(items: readonly Item[], from: number, to: number): number[] {
  const strong = items[to];
  const all = carriers(items, from, to);
  if (strong === undefined || !isStrongBreak(strong)) return all;
  let end = from;
  while (end < to && !isWeakBreak(items[end] ?? strong)) end++;
  return all.filter((index) => index < end || "PGTU".includes(classOf(items[index])));
}

/** "246, utility set a new transformer three weeks ago": when that happened, not when it was measured. */
function toldBetween(items: readonly Item[], from: number, to: number): boolean {
  let words = 0;
  for (let i = from + 1; i < to; i++)
    if (
      items[i]?.kind === itemKind.label ||
      (items[i]?.kind === itemKind.word && items[i]?.roles === 0)
    )
      words++;
  return words > 1;
}

/** Behind the last value a comma ends what is said of it, but for points, times and units. */
function lastBehind(items: readonly Item[], last: Draft): number[] {
  let end = last.index + 1;
  while (end < items.length) {
    const item = items[end];
    if (item === undefined || isStrongBreak(item) || isWeakBreak(item)) break;
    end++;
  }
  // "39.8 the room was two degrees colder": of that something else is told
  const near = carriers(items, last.index + 1, end).filter(
    (index) =>
      !(
        items[index - 1]?.text === "the" &&
        items[index + 1]?.text === "was" &&
        classOf(items[index]) === "L"
      ),
  );
  const far = carriers(items, end, items.length).filter((index) => {
    const kind = classOf(items[index]);
    const ended = afterBreak(items, end, index);
    if (kind === "C") return !ended && items[index]?.label?.state === "start";
    if (kind === "S" && ended) return false;
    return (
      "PGTU".includes(kind) ||
      (kind === "S" && isPreposition(items[index - 1])) ||
      (kind === "S" && index === items.length - 1 && items[index - 1]?.text === ",") ||
      (kind === "E" && items[end]?.text === "," && !toldBetween(items, end, index))
    );
  });
  return [...near, ...far];
}

/** What was told before "but", "anyway", "so" is not about the first value. */
function afterTalk(items: readonly Item[], to: number): number {
  for (let i = to - 1; i > 0; i--) {
    const text = items[i]?.text;
    if (text === "but" || text === "anyway" || text === "however" || text === "because") return i;
  }
  return 0;
}

/** Do words that are no label end the label's own sentence? */
function talksOn(items: readonly Item[], index: number, least: number): boolean {
  let words = 0;
  for (let i = index + 1; i < items.length; i++) {
    const item = items[i];
    if (item === undefined || isStrongBreak(item)) break;
    if (item.kind === itemKind.word && (item.roles & (role.is | role.article)) === 0) words++;
  }
  return words >= least;
}

/** "sorry bar not psi. suction temp is 11": units of what was said before. */
function deniesUnit(items: readonly Item[], index: number): boolean {
  return [items[index - 1], items[index + 1]].some((item) => item?.text === "not");
}

/** "spring check. return 67": what a sentence of its own says of the visit is not about a value. */
function apart(items: readonly Item[], index: number, kind: string): boolean {
  if (kind === "C") return true;
  if (kind === "U" && deniesUnit(items, index)) return true;
  // "rla is what we go by. reading 38.8"
  if (kind === "R" && items[index]?.label?.plate !== true) return talksOn(items, index, 2);
  // "leg 3 loose at the disco, lug burnt. tightened, now 22.3"
  if (kind === "P" || kind === "L") return talksOn(items, index, 2);
  return kind === "E" && items[index + 1]?.text === "." && items[index + 1]?.kind === itemKind.sign;
}

/** "at max Hz, valves 500": a unit before a comma is not that of a label behind it. */
function unitLeftBehind(items: readonly Item[], index: number, value: number): boolean {
  if (items[index]?.kind !== itemKind.unit) return false;
  const comma = items.findIndex((item, i) => i > index && i < value && item.text === ",");
  if (comma < 0) return false;
  return items.slice(comma + 1, value).some((item) => item.label !== undefined);
}

/** One draft a value, each with the items that speak of it. */
export function gather(items: readonly Item[], values: readonly number[]): Draft[] {
  const drafts = values.map((index) => draft(index, items[index]?.value ?? Number.NaN));
  const pointsBehind = namesPointsBehind(items, values);
  const placesBehind = namesPlacesBehind(items, values);
  const timesBehind = namesTimesBehind(items, values);
  let leading = "";
  let sentence = 0;
  let start = 0;
  drafts.forEach((now, order) => {
    const left = drafts[order - 1];
    let from = left === undefined ? afterTalk(items, now.index) : left.index + 1;
    if (left !== undefined) {
      const behind = { pointsBehind, placesBehind, timesBehind };
      const at = cut({ items, from, to: now.index, left, leading, ...behind });
      left.behind = sideBehind(items, from, at);
      from = at;
    }
    const breaks = lastBreak(items, from, now.index);
    if (breaks >= 0) {
      sentence++;
      leading = "";
      start = order;
    }
    now.before = carriers(items, from, now.index);
    if (breaks >= 0)
      now.before = now.before.filter(
        (index) => index > breaks || !apart(items, index, classOf(items[index])),
      );
    now.before = now.before.filter((index) => !unitLeftBehind(items, index, now.index));
    now.sentence = sentence;
    if (order === start) leading = classesOf(items, now.before);
  });
  const last = drafts[drafts.length - 1];
  if (last !== undefined) last.behind = lastBehind(items, last);
  return drafts;
}
