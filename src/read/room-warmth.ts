import type { UnitHabit } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
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

/** Does a room's name stand before a figure, past a verb? */
function behindRoom(items: readonly Item[], index: number): boolean {
  let at = index - 1;
  while (
    at > index - 6 &&
    (led.test(items[at]?.text ?? "") || ((items[at]?.roles ?? 0) & role.is) !== 0)
  )
    at--;
  return rooms.test(items[at]?.text ?? "") && items[at]?.kind !== itemKind.subject;
}

/** "bedroom 74 den's only 68 and the office is 71": where several rooms are told, or degrees are, it is their warmth. */
export function roomWarmth(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const { units, readings } = context;
  const found = drafts.filter(
    (draft) => !draft.gone && isBare(draft, units) && behindRoom(items, draft.index),
  );
  const warm = readings[readings.length - 1]?.quantity === "temperature";
  const degrees = drafts.some(({ unit }) => unit?.dimension === "temperature");
  if (found.length < 2 && !warm && !degrees) return;
  for (const draft of found) {
    draft.named = "temperature";
    draft.hint = "temperature";
    draft.component = false;
    draft.thing = undefined;
    if (draft.unit !== undefined) continue;
    draft.unit = unitCalled(units === "us" ? "F" : "C");
    draft.assumedUnit = true;
  }
}
