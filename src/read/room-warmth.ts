import type { UnitHabit } from "../model.ts";
import { isStrongBreak } from "./breaks.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { countedStorey } from "./subject-name.ts";
import { role } from "./word.ts";

/** A room's air, or what blows into it, F and Cel; common practice, no source. */
const airs: Readonly<Record<UnitHabit, readonly [number, number]>> = { us: [40, 130], si: [5, 55] };

const rooms =
  /^(?:(?:bed|bath|sun|class|mud|show|cloak|store|work|tool)rooms?|room|den|master|office|kitchen|lobby|foyer|hall|hallway|attic|loft|basement|cellar|dining|lounge|nursery|study|library|garage|studio|upstairs|downstairs|guest|bar|salon|gym|chapel|parlou?r)$/;
const led =
  /^(?:at|to|up|down|only|just|still|about|like|head|unit|blowing|putting|out|has|got|came|went|reads|reading|sits|sitting|now|back|getting|,|:|-)$/;

function isBare(draft: Draft, units: UnitHabit): boolean {
  const { unit, named, points, rating, subject } = draft;
  const free = [named, points, rating, subject].every((one) => one === undefined);
  const degrees = unit === undefined || unit.dimension === "temperature";
  const [low, high] = airs[units];
  return free && degrees && !draft.over && !draft.same && draft.value >= low && draft.value <= high;
}

/** Where the name before a figure stands, past a verb and so many words at most. */
function nameAt(items: readonly Item[], index: number, most: number): number {
  let at = index - 1;
  while (
    at > index - most &&
    (led.test(items[at]?.text ?? "") || ((items[at]?.roles ?? 0) & role.is) !== 0)
  )
    at--;
  return at;
}

/** Does a room's name stand before a figure, past a verb? */
function behindRoom(items: readonly Item[], index: number): boolean {
  const name = items[nameAt(items, index, 6)];
  return rooms.test(name?.text ?? "") && name?.kind !== itemKind.subject;
}

const places = /^(?:rooms?|floor|fl|flr|level|lvl|zone|space|suite|wing|upstairs|downstairs)$/;
const turns = /^(?:warming|cooling|warmer|cooler|heating)$/;

/** "floor 3 warming, 19.5 now was 16": behind a place that grows warmer or cooler bare figures are its degrees. */
function whileItTurns(items: readonly Item[], index: number): boolean {
  const from = Math.max(0, index - 9);
  const near = items.slice(from, index);
  const at = near.findLastIndex(({ text }) => turns.test(text));
  if (at < 0 || near.slice(at).some((item) => isStrongBreak(item))) return false;
  // what is named behind it is what the figure is of
  if (near.slice(at + 1).some(({ label, points }) => label !== undefined || points !== undefined))
    return false;
  const behind = items[index + 1];
  if (behind?.label !== undefined || behind?.points !== undefined) return false;
  // "rooms cooling, 118/340": gauges
  if (/^(?:\/|over)$/.test(behind?.text ?? "") || near.some(({ text }) => text === "/"))
    return false;
  return items
    .slice(Math.max(0, from + at - 4), from + at)
    .some(
      ({ text, kind }) =>
        places.test(text) || (kind === itemKind.subject && /^(?:room|zone|floor)/.test(text)),
    );
}

/** "second floor 74", "third floor is 79": a storey that has its number already. */
function onStorey(items: readonly Item[], index: number): boolean {
  const at = nameAt(items, index, 4);
  const storey = /^(?:floor|flr|story|storey)$/.test(items[at]?.text ?? "");
  return storey && countedStorey.test(items[at - 1]?.text ?? "");
}

/** What people let a room be, F and Cel; common practice, no source. */
const lived: Readonly<Record<UnitHabit, readonly [number, number]>> = {
  us: [55, 99],
  si: [15, 36],
};

/** "kitchen's at 76, suction 118": one room alone, with its verb, and nothing behind it that the figure is of. */
function isSaidWarm({ index, value }: Draft, items: readonly Item[], units: UnitHabit): boolean {
  const [low, high] = lived[units];
  if (value < low || value > high) return false;
  const name = nameAt(items, index, 6);
  const verb = name < index - 1 || items[name]?.apostrophe === true;
  const [next, after] = [items[index + 1], items[index + 2]];
  const named = next?.label !== undefined || next?.kind === itemKind.unit;
  return verb && (!named || after?.kind === itemKind.number || after?.text === "at");
}

/** "hall 25 set 22", "lobby 78 set 72": what it is set to, right behind a room's figure. */
function setBehind(draft: Draft, drafts: readonly Draft[], units: UnitHabit): Draft | undefined {
  const set = drafts[drafts.indexOf(draft) + 1];
  const free = set?.unit === undefined && set?.named === undefined && set?.hint === undefined;
  if (set?.rating !== "setpoint" || !free || set.index > draft.index + 3) return undefined;
  const [low, high] = lived[units];
  const both = [draft, set].every(({ value }) => value >= low && value <= high);
  return both ? set : undefined;
}

/** "bedroom 74 den's only 68 and the office is 71": where several rooms are told, or degrees are, it is their warmth. */
export function roomWarmth(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const { units, readings } = context;
  const bare = drafts.filter((draft) => !draft.gone && isBare(draft, units));
  for (const draft of bare)
    if (whileItTurns(items, draft.index) || onStorey(items, draft.index)) asDegrees(draft, units);
  const found = bare.filter((draft) => isBare(draft, units) && behindRoom(items, draft.index));
  const warm = readings[readings.length - 1]?.quantity === "temperature";
  const degrees = drafts.some(({ unit }) => unit?.dimension === "temperature");
  const several = found.length > 1 || warm || degrees;
  for (const draft of found) {
    const set = setBehind(draft, drafts, units);
    if (set === undefined) continue;
    asDegrees(draft, units);
    asDegrees(set, units);
    // "set 72 blowing 55": the next figure's
    if (set.place === "supply_air") set.place = undefined;
  }
  for (const draft of found)
    if (several || isSaidWarm(draft, items, units)) asDegrees(draft, units);
}

function asDegrees(draft: Draft, units: UnitHabit): void {
  draft.named = "temperature";
  draft.hint = "temperature";
  draft.component = false;
  draft.thing = undefined;
  if (draft.unit !== undefined) return;
  draft.unit = unitCalled(units === "us" ? "F" : "C");
  draft.assumedUnit = true;
}
