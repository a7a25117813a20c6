import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** What rooms have, F and Cel; common practice, no source. */
const room: Readonly<Record<UnitHabit, readonly [number, number]>> = { us: [45, 110], si: [8, 45] };

/** "zone 24.5", "room 74.5": no room's number has tenths. */
export function zoneDegrees(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  const [low, high] = room[units];
  for (const draft of drafts) {
    const { unit, named, points, place, value } = draft;
    if (draft.gone || draft.over || items[draft.index]?.kind !== itemKind.number) continue;
    if ((unit ?? named ?? points ?? place) !== undefined || Number.isInteger(value)) continue;
    const joint = /^(?:is|at|:|=)$/.test(items[draft.index - 1]?.text ?? "");
    if (!/^(?:zone|zn|rm|room)$/.test(items[draft.index - (joint ? 2 : 1)]?.text ?? "")) continue;
    if (value < low || value > high) continue;
    draft.named = "temperature";
    draft.place = "indoor_air";
  }
}
