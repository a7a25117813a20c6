import type { Item } from "./item.ts";

/** "waited the five minutes on the sticker": the time that a label asks for, no value of what was read then. */
export function ofTheWait(items: readonly Item[], index: number): boolean {
  const before = items.slice(Math.max(0, index - 3), index);
  const timed = before.some(
    ({ unit, text }) =>
      unit?.dimension === "time" || /^(?:minutes?|mins?|wait|waited|time)$/.test(text),
  );
  return timed || /^(?:time|wait|minutes?)$/.test(items[index + 1]?.text ?? "");
}
