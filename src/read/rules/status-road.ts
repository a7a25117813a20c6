import { isStrongBreak } from "../breaks.ts";
import type { Note } from "../note.ts";
import { textAt } from "./near.ts";
import { clockNear } from "./status-clock.ts";
import type { Seen } from "./status-words.ts";

const home = /^(?:home|shop|office|yard|back|out|done|gone)$/;

/** "leaving the house, mill by 7:40": behind where he starts from stands where he will be by when. */
export function comesBy(note: Note, seen: Seen): boolean {
  if (seen.status !== "left_site") return false;
  const { items } = note;
  const clock = clockNear(items, seen.at, false);
  if (clock === undefined || textAt(items, clock.from - 1) !== "by") return false;
  const between = items.slice(seen.at, clock.from - 1);
  const parted = between.some((one) => isStrongBreak(one) || one.text === ",");
  return parted && !home.test(between.at(-1)?.text ?? "");
}

/** "all done, back on the road": away, and to no place that was told. */
export function onTheRoad(note: Note, { status, at }: Seen): boolean {
  const said = note.plain.slice(note.items[at]?.from);
  return status === "on_the_way" && /^(?:back )?on the road[.! ]*$/.test(said);
}
