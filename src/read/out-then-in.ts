import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const between = /^(?:rise|drop|split|diff|difference|td|dt|delta|spread|=)$/;

/** Degrees, where nothing else was said of them. */
function bare({ named, points, action, rating, unit, place }: Draft): boolean {
  return (
    named === undefined &&
    points === undefined &&
    action === undefined &&
    rating === undefined &&
    (place === undefined || place === "outdoor_air") &&
    (unit === undefined || unit.dimension === "temperature")
  );
}

/** Is what lies between two values told right here? */
function tellsBetween(items: readonly Item[], { index, named }: Draft): boolean {
  if (named === "temperature_difference") return true;
  return [index - 1, index + 1].some((at) => between.test(items[at]?.text ?? ""));
}

/** "95 out, 78 in": the weather, and what it is inside. */
function weather(into: Draft): void {
  into.place = "indoor_air";
  into.hint = "temperature";
}

/**
 * "128 out 69 in 59 rise": the air behind and before what heats or cools it, where what lies between is told
 * too; "95 out 75 in" alone may be the weather and the room.
 */
export function outThenIn(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((out, order) => {
    const [into, apart] = [drafts[order + 1], drafts[order + 2]];
    if (into === undefined || !bare(out) || !bare(into)) return;
    if (items[out.index + 1]?.text !== "out" || items[into.index + 1]?.text !== "in") return;
    if (apart === undefined) {
      const ends = items[into.index + 2] === undefined;
      if (ends && out.place === "outdoor_air" && into.place === undefined) weather(into);
      return;
    }
    if (Math.abs(Math.abs(out.value - into.value) - apart.value) > 0.6) return;
    if (!tellsBetween(items, apart)) return;
    out.place = "supply_air";
    into.place = "return_air";
    out.hint = "temperature";
    into.hint = "temperature";
    apart.named = "temperature_difference";
    apart.hint = undefined;
    apart.place = undefined;
  });
}
