import type { Relation } from "../model.ts";
import { isStrongBreak } from "./breaks.ts";
import { classOf } from "./carrier.ts";
import type { Between, Draft } from "./draft.ts";
import { sameDimension } from "./inherit.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

const filler =
  role.is |
  role.article |
  role.only |
  role.conjunction |
  role.preposition |
  role.now |
  role.correct |
  role.next |
  role.to |
  role.change |
  role.about |
  role.after;

const manyLegs = role.all | role.each;

function relationOf(roles: number): Relation | undefined {
  if ((roles & role.atLeast) !== 0) return ">=";
  if ((roles & role.atMost) !== 0) return "<=";
  if ((roles & role.greater) !== 0) return ">";
  if ((roles & role.less) !== 0) return "<";
  if ((roles & role.about) !== 0) return "~";
  return undefined;
}

/** "won't pull below 2500": it stands there, it is not less. */
function stuckAbove(items: readonly Item[], i: number): boolean {
  for (let at = i - 1; at >= 0 && at >= i - 3; at--)
    if (((items[at]?.roles ?? 0) & role.not) !== 0) return true;
  return false;
}

function dips(items: readonly Item[], i: number): boolean {
  for (let at = i - 1; at >= 0 && at >= i - 4; at--)
    if (/^(?:dip|sag|drop|fell|fall|went|goes|down)/.test(items[at]?.text ?? "")) return true;
  return false;
}

/** "over", "about", "<" directly before a number. */
function relationBefore(items: readonly Item[], index: number): Relation | undefined {
  for (let i = index - 1; i >= 0 && i >= index - 3; i--) {
    const item = items[i];
    if (item === undefined || item.kind === itemKind.number || item.owner !== undefined)
      return undefined;
    // "it's like two oh nine" is how people talk, "head like 190" is about
    // "so call it twelve": what comes of it
    const sum = item.text === "call" && items[i - 1]?.text === "so";
    const talk = sum || (item.text === "like" && ((items[i - 1]?.roles ?? 0) & role.is) !== 0);
    const found = talk ? undefined : relationOf(item.roles);
    if (found === "~" && (item.roles & role.preposition) !== 0 && i !== index - 1) return undefined;
    if (found === "<" && stuckAbove(items, i)) return "=";
    // "never went above 8"
    if ((found === ">" || found === ">=") && stuckAbove(items, i)) return "<=";
    // "dipped to a minimum of 191" is what it dipped to
    if (found === ">=" && /^(?:a|minimum)$/.test(items[i]?.text ?? "") && dips(items, i))
      return "=";
    if (found !== undefined) return found;
    if ((item.roles & (role.article | role.only)) === 0 || item.label !== undefined)
      return undefined;
  }
  return undefined;
}

/** "2 gig plus on every leg" */
function onAll(items: readonly Item[], at: number): boolean {
  const [joint, all] = items.slice(at, at + 2);
  return /^(?:on|to|at)$/.test(joint?.text ?? "") && ((all?.roles ?? 0) & manyLegs) !== 0;
}

/** "or so", "ish", "or more", "+" directly behind it. */
function relationBehind(items: readonly Item[], index: number): Relation | undefined {
  const next = items[index + 1];
  if (next === undefined || next.owner !== undefined) return undefined;
  // "44.1+4.9": two values, no bound
  const two = items[index + 2]?.kind === itemKind.number && items[index + 2]?.glued === true;
  if (next.text === "+" && next.glued && !two) return ">=";
  const last = items[index + 2];
  if (
    next.text === "plus" &&
    (last === undefined ||
      last.kind === itemKind.sign ||
      last.kind === itemKind.points ||
      last.kind === itemKind.ground ||
      last.kind === itemKind.unit ||
      onAll(items, index + 2))
  )
    return ">=";
  // "7 lb and change"
  if (
    next.text === "and" &&
    /^(?:change|some)$/.test(last?.text ?? "") &&
    items[index + 3]?.kind !== itemKind.number
  )
    return "~";
  const tail =
    next.text === "or" ||
    next.text === "ish" ||
    next.text === "give" ||
    next.text === "and" ||
    next.text === "tops" ||
    next.text === "approx" ||
    next.text === "roughly" ||
    next.text === "max";
  if (!tail) return undefined;
  const found = relationOf(next.roles);
  return found === ">" || found === "<" ? undefined : found;
}

/** What goes on behind "six below" without saying below what. */
const behindBelow =
  /^(?:and|but|with|now|in|inside|so|right|still|already|today|tonight|outside|which|steady|holding|then|while|when)$/;

/** "ten below", "six below and …": under zero. */
function belowZero(items: readonly Item[], index: number): boolean {
  const next = items[index + 1];
  if (next?.text !== "below") return false;
  const after = items[index + 2];
  return (
    after === undefined ||
    after.text === "zero" ||
    after.text === "0" ||
    (behindBelow.test(after.text) && items[index]?.label === undefined) ||
    (after.kind !== itemKind.number && after.kind !== itemKind.word)
  );
}

/** The zero of "eleven below zero" is no value of its own. */
function dropZero(drafts: readonly Draft[], items: readonly Item[], at: number): void {
  const zero = items[at];
  if (zero?.kind !== itemKind.number || zero.value !== 0) return;
  zero.owner = "<number> below zero";
  for (const draft of drafts)
    if (draft.index === at) draft.gone = true;
    else if (draft.index === at - 2) draft.behind = [...draft.behind, at];
}

/** "at a thousand volts over two gig": of another kind, so it is no pair. */
function atVolts(item: Item | undefined): boolean {
  return item?.unit?.dimension === "voltage";
}

export function relate(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    const item = items[draft.index];
    if (item === undefined || item.kind !== itemKind.number) continue;
    if (
      belowZero(items, draft.index) &&
      (item.unit === undefined || item.unit.dimension === "temperature")
    ) {
      draft.value = -draft.value;
      dropZero(drafts, items, draft.index + 2);
      continue;
    }
    // "10 above zero"
    const zero = items[draft.index + 2];
    if (items[draft.index + 1]?.text === "above" && zero?.value === 0 && zero.unit === undefined)
      dropZero(drafts, items, draft.index + 2);
    // "44.1 over 4.8", "118 over 340": two figures, no bound
    const pair =
      items[draft.index - 1]?.text === "over" &&
      items[draft.index - 2]?.kind === itemKind.number &&
      !(atVolts(items[draft.index - 2]) && item.unit?.dimension === "resistance");
    // "6.6 under 7.1 fla": held against a plate, whose own figure is no bound
    const plate = /^(?:RLA|LRA|FLA|MCA|MOP|MOC|MCC)$/.test(draft.rating ?? "");
    if (pair || plate) continue;
    item.relation = relationBefore(items, draft.index) ?? relationBehind(items, draft.index) ?? "=";
  }
}

/** What stands between two values; looked at once for each pair. */
export function between(items: readonly Item[], left: Draft, right: Draft): Between {
  if (right.gapFrom === left.index && right.gap !== undefined) return right.gap;
  const gap = look(items, left, right);
  right.gap = gap;
  right.gapFrom = left.index;
  return gap;
}

function look(items: readonly Item[], left: Draft, right: Draft): Between {
  let roles = 0;
  let bare = true;
  let list = true;
  let strong = false;
  let carriers = false;
  let plainWords = 0;
  for (let i = left.index + 1; i < right.index; i++) {
    const item = items[i];
    if (item === undefined) continue;
    roles |= item.roles;
    if (isStrongBreak(item)) strong = true;
    if (classOf(item) !== "") carriers = true;
    else if (item.kind === itemKind.word && item.roles === 0) plainWords++;
    const comma =
      item.kind === itemKind.sign &&
      (item.text === "," || item.text === "/" || item.text === "-" || item.text === "&");
    if (!comma && item.text !== "and" && item.text !== "n") list = false;
    if (
      !comma &&
      item.text !== "?" &&
      (item.roles & (filler | role.not | role.or)) === 0 &&
      item.owner === undefined
    )
      bare = false;
  }
  const middle = items[left.index + 1];
  const dash =
    right.index === left.index + 2 && middle?.kind === itemKind.sign && middle.text === "-";
  if (dash && middle?.glued !== items[right.index]?.glued) list = false;
  return {
    roles,
    bare: bare && !carriers,
    list: list && !strong && !carriers,
    dash,
    strong,
    carriers,
    empty: right.index === left.index + 1,
    calm: plainWords <= 2,
  };
}

/** Words that change speaks of, in the sentence before a value. */
export function rolesBefore(items: readonly Item[], draft: Draft, from: number): number {
  let roles = 0;
  for (let i = draft.index - 1; i >= from; i--) {
    const item = items[i];
    if (item === undefined || isStrongBreak(item)) break;
    roles |= hasObject(items, i) ? item.roles & ~role.change : item.roles;
  }
  return roles;
}

/** "dropped L3 on the contactor", "lost a leg": what was lost is no value's change. */
function hasObject(items: readonly Item[], i: number): boolean {
  if (!/^(?:dropped|dropping|drops|lost|losing|loses)$/.test(items[i]?.text ?? "")) return false;
  const at = ((items[i + 1]?.roles ?? 0) & role.article) !== 0 ? i + 2 : i + 1;
  const next = items[at];
  return next?.kind === itemKind.points || /^(?:legs?|phases?)$/.test(next?.text ?? "");
}

/** Values of one kind, one after the other; "0.4 meg 500 V" is a value and what it was measured with. */
export function inRow(items: readonly Item[], left: Draft, right: Draft): boolean {
  const apart = left.unit !== undefined && right.unit !== undefined && !sameDimension(left, right);
  // ".8, 550 meg to ground": a row has one unit, said with each or with the last, or with none
  const another = right.ownUnit && (right.unit?.factor ?? 1) >= 1e5 && left.value < 30;
  const own = left.ownUnit && left.unit?.factor === right.unit?.factor;
  // "28 amps, 460 on all three legs"
  const drawn = left.unit?.dimension === "current" || /^(?:RLA|FLA|MCA)$/.test(left.rating ?? "");
  const amps = drawn && left.value > 0 && right.unit === undefined && right.rating === undefined;
  if (amps && right.value >= 90 && right.value > 8 * left.value) return false;
  // "T1-T2 0.74 ohm, 480 leg to leg all three": behind a figure in ohms no bare one is so far from it; common practice, no source
  const ohms = left.ownUnit && left.unit?.factor === 1 && left.unit.dimension === "resistance";
  if (ohms && !right.ownUnit && right.value >= 90 && right.value > 30 * left.value) return false;
  return (
    !apart &&
    !(another && !own && right.value > 100 * left.value) &&
    between(items, left, right).list
  );
}
