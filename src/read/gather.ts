import { afterBreak, isPreposition, isStrongBreak, isWeakBreak, lastBreak } from "./breaks.ts";
import { classOf } from "./carrier.ts";
import { type Draft, draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { namesPlacesBehind, namesPointsBehind } from "./points-behind.ts";
import { suits } from "./suits.ts";
import { role } from "./word.ts";

function isVerb(item: Item | undefined): boolean {
  return item !== undefined && ((item.roles & role.is) !== 0 || item.apostrophe);
}

function skipArticles(items: readonly Item[], i: number): number {
  let at = i;
  while (
    (items[at]?.roles ?? 0) & (role.article | role.all | role.each) &&
    classOf(items[at]) === ""
  )
    at++;
  return at;
}

/** What a side already has, by class of carrier. */
function classesOf(items: readonly Item[], list: readonly number[]): string {
  let found = "";
  for (const index of list) found += classOf(items[index]);
  return found;
}

/** The gap between two values, and what decides where it is cut. */
interface Gap {
  readonly items: readonly Item[];
  readonly from: number;
  readonly to: number;
  readonly left: Draft;
  /** classes that came before the first value of the sentence: later ones do too */
  readonly leading: string;
  /** the sentence names its points behind the values */
  readonly pointsBehind: boolean;
  readonly placesBehind: boolean;
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
    if (plateBehind(gap, next, mine)) {
      at = next + 1;
      continue;
    }
    const rail = kind === "P" && preposition !== undefined && items[next - 1]?.text === "to";
    if ((mine.includes(kind) || taken.includes(kind)) && !rail) return at;
    if (isVerb(items[next]) || isVerb(items[next + 1])) return at;
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

/** "FLA 11.8 on tag": a plate's word behind a rated number goes with it. */
function plateBehind(gap: Gap, next: number, mine: string): boolean {
  return mine.includes("R") && next === gap.from && gap.items[next]?.label?.plate === true;
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

/** "supply air 56 wet bulb 54": directly before a number that has no bulb behind it, the bulb is that one's. */
function leadsOn(gap: Gap, next: number): boolean {
  if (next + 1 !== gap.to || gap.left.before.length === 0) return false;
  const behind = gap.items[gap.to + 1];
  return !(
    behind?.label?.quantity === "wet_bulb_temperature" || /^(?:db|dry|wb)$/.test(behind?.text ?? "")
  );
}

function ratedBehind(gap: Gap): boolean {
  if (gap.left.before.length === 0) return true;
  const behind = gap.items[gap.to + 1];
  return behind?.label?.rating !== undefined;
}

/** Does the sentence put this class of label behind its numbers? */
function goesLeft(gap: Gap, next: number, kind: string, taken: string): boolean {
  const item = gap.items[next];
  if (item === undefined) return false;
  const stuck = next === gap.from && item.glued && item.kind === itemKind.label;
  if (stuck) return true;
  const bulb =
    item.label?.quantity === "wet_bulb_temperature" || item.text === "db" || item.text === "dry";
  if (bulb && next === gap.from && !leadsOn(gap, next)) return true;
  if (kind === "U")
    return gap.items[gap.left.index]?.unit === undefined && gap.items[gap.to]?.unit !== undefined;
  if (kind === "A") return false;
  if (kind === "P") return gap.pointsBehind;
  if (kind === "L" && gap.placesBehind) return true;
  if (
    kind === "R" &&
    item.label?.quantity === "current" &&
    next === gap.from &&
    gap.items[gap.to]?.unit !== undefined &&
    gap.items[gap.to]?.unit?.dimension !== "current"
  )
    return true;
  // "pulling 2.2 fla 1.9": a rating's word leads its number, unless the next number has one behind it
  if (kind === "R" && next + 1 === gap.to && !ratedBehind(gap)) return false;
  const ahead = gap.items[next + 1]?.label?.rating;
  if (kind === "R" && item.label?.plate === true && ahead !== undefined && next + 1 < gap.to)
    return false;
  if (kind === "R")
    return (
      item.label?.plate === true ||
      (item.label?.quantity === "current" && !gap.leading.includes("R"))
    );
  if (kind === "E")
    return (
      item.label === undefined &&
      (item.roles & role.earlier) !== 0 &&
      next === gap.from &&
      gap.left.before.length > 0
    );
  if (kind === "G") return true;
  if (gap.leading.includes(kind)) return false;
  if ("LQ".includes(kind) && /[LQ]/.test(gap.leading + classesOf(gap.items, gap.left.before)))
    return false;
  if (kind === "S" || kind === "N" || kind === "T") return false;
  const glued = gap.items[next + 1];
  if (glued?.kind === itemKind.number && glued.glued) return false;
  if (taken !== "" && kind !== "C") return false;
  const left = gap.items[gap.left.index];
  if (left?.unit === undefined && kind !== "R")
    return (
      suits(item, undefined) &&
      (gap.leading === "" ||
        (gap.leading === "U" &&
          gap.items.some(
            (one) => one.kind === itemKind.unit && one.unit?.dimension === "pressure",
          )))
    );
  return suits(item, left?.unit?.dimension);
}

/** "same shell temp it was 2100", "at this temp": how it was measured, not what. */
function sameAsBefore(items: readonly Item[], i: number): boolean {
  const item = items[i];
  const before = items[i - 1]?.text;
  if (item?.kind !== itemKind.label || items[i + 1]?.kind === itemKind.number) return false;
  if (before === "same") return items[i + 1] !== undefined;
  return (before === "this" || before === "that") && items[i - 2]?.text === "at";
}

function carriers(items: readonly Item[], from: number, to: number): number[] {
  const list: number[] = [];
  for (let i = from; i < to; i++)
    if (classOf(items[i]) !== "" && !sameAsBefore(items, i)) list.push(i);
  return list;
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

/** Behind the last value a comma ends what is said of it, but for points, times and units. */
function lastBehind(items: readonly Item[], last: Draft): number[] {
  let end = last.index + 1;
  while (end < items.length) {
    const item = items[end];
    if (item === undefined || isStrongBreak(item) || isWeakBreak(item)) break;
    end++;
  }
  const near = carriers(items, last.index + 1, end);
  const far = carriers(items, end, items.length).filter((index) => {
    const kind = classOf(items[index]);
    const ended = afterBreak(items, end, index);
    if (kind === "C") return !ended && items[index]?.label?.state === "start";
    if (kind === "S" && ended) return false;
    return (
      "PGTU".includes(kind) ||
      (kind === "S" && isPreposition(items[index - 1])) ||
      (kind === "E" && items[end]?.text === ",")
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

/** "spring check. return 67": what a sentence of its own says of the visit is not about a value. */
function apart(items: readonly Item[], index: number, kind: string): boolean {
  if (kind === "C") return true;
  return kind === "E" && items[index + 1]?.text === "." && items[index + 1]?.kind === itemKind.sign;
}

/** One draft a value, each with the items that speak of it. */
export function gather(items: readonly Item[], values: readonly number[]): Draft[] {
  const drafts = values.map((index) => draft(index, items[index]?.value ?? Number.NaN));
  const pointsBehind = namesPointsBehind(items, values);
  const placesBehind = namesPlacesBehind(items, values);
  let leading = "";
  let sentence = 0;
  let start = 0;
  drafts.forEach((now, order) => {
    const left = drafts[order - 1];
    let from = left === undefined ? afterTalk(items, now.index) : left.index + 1;
    if (left !== undefined) {
      const at = cut({ items, from, to: now.index, left, leading, pointsBehind, placesBehind });
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
    now.sentence = sentence;
    if (order === start) leading = classesOf(items, now.before);
  });
  const last = drafts[drafts.length - 1];
  if (last !== undefined) last.behind = lastBehind(items, last);
  return drafts;
}
