import { isStrongBreak } from "./breaks.ts";
import type { Item } from "./item.ts";
import { role } from "./word.ts";

/** "waited the five minutes on the sticker": the time that a label asks for, no value of what was read then. */
export function ofTheWait(items: readonly Item[], index: number): boolean {
  const before = items.slice(Math.max(0, index - 3), index);
  const timed = before.some(
    ({ unit, text }) =>
      unit?.dimension === "time" || /^(?:minutes?|mins?|wait|waited|time)$/.test(text),
  );
  return timed || /^(?:time|wait|minutes?)$/.test(items[index + 1]?.text ?? "");
}

/** "label is faded. suction 118": what is told of the label itself, and behind the stop what was measured. */
export function plateTold(items: readonly Item[], index: number, figure: number): boolean {
  if (index > figure) return false;
  const between = items.slice(index + 1, figure);
  const stop = between.findIndex(isStrongBreak);
  // "label says R-410A. off since": the gas was taken for itself
  const told = ({ roles, text, owner }: Item): boolean =>
    (roles & role.is) !== 0 || text === "says" || owner !== undefined;
  return stop > 0 && between.slice(0, stop).some(told);
}
