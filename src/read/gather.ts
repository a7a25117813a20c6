import { afterBreak, isPreposition, isStrongBreak, isWeakBreak, lastBreak } from "./breaks.ts";
import { classOf } from "./carrier.ts";
import { carriers } from "./carriers.ts";
import { cut } from "./cut.ts";
import { type Draft, draft } from "./draft.ts";
import { classesOf } from "./goes-left.ts";
import { type Item, itemKind } from "./item.ts";
import { namesPlacesBehind, namesPointsBehind } from "./points-behind.ts";
import { namesTimesBehind } from "./times-behind.ts";
import { role } from "./word.ts";

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

const faults = /^(?:fault|faults|alarm|alarms|error|errors|lockout|trip|trips)$/;

/** "low bus fault. line 478": the fault's name, where the value has a name of its own. */
function namesFault(items: readonly Item[], index: number, value: number): boolean {
  let end = index + 1;
  while (items[end]?.kind === itemKind.label && end < value) end++;
  if (!faults.test(items[end]?.text ?? "")) return false;
  return items
    .slice(end + 1, value)
    .some(({ label, points }) => label !== undefined || points !== undefined);
}

/** "spring check. return 67": what a sentence of its own says of the visit is not about a value. */
function apart(items: readonly Item[], index: number, value: number): boolean {
  const kind = classOf(items[index]);
  if (kind === "C") return true;
  if (kind === "U" && deniesUnit(items, index)) return true;
  // "rla is what we go by. reading 38.8"
  if (kind === "R" && items[index]?.label?.plate !== true) return talksOn(items, index, 2);
  // "leg 3 loose at the disco, lug burnt. tightened, now 22.3"
  if (kind === "P" || kind === "L")
    return talksOn(items, index, 2) || namesFault(items, index, value);
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
      now.before = now.before.filter((index) => index > breaks || !apart(items, index, now.index));
    now.before = now.before.filter((index) => !unitLeftBehind(items, index, now.index));
    now.sentence = sentence;
    if (order === start) leading = classesOf(items, now.before);
  });
  const last = drafts[drafts.length - 1];
  if (last !== undefined) last.behind = lastBehind(items, last);
  return drafts;
}
