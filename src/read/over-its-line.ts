import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { lineF, within } from "./line-range.ts";
import { takeFor } from "./recast.ts";

/** psi of one side's gauge. Common practice, no source. */
const gaugePsi = { suction: [5, 260], high: [60, 700] } as const;
/** How many times its line's F the gauge shows in psi at least: nearer than that, both are gauges of a compressor that does not pump. */
const apart = 1.2;
/** F: up to here the line is the liquid's, from the second on the discharge's; between them nobody can tell. Common practice, no source. */
const warmth = { liquid: 130, discharge: 140 } as const;

const between = /^(?:on|at|of|off|the|my|is|at|'s|s|runs|running|reads|:)$/;

/** The place that the nearest word ahead or behind names, little words aside. */
function named(items: readonly Item[], from: number, step: 1 | -1): Item | undefined {
  let at = from;
  while (between.test(items[at]?.text ?? "") && Math.abs(at - from) < 3) at += step;
  return items[at]?.label === undefined ? undefined : items[at];
}

function isBare({ ownUnit, named: as, points, rating, action, over }: Draft): boolean {
  const free = [points, rating, action].every((one) => one === undefined);
  return !ownUnit && !over && free && (as === undefined || as === "pressure");
}

const isHigh = (place: string | undefined): boolean => place === "discharge" || place === "liquid";

function asPair(left: Draft, right: Draft, place: Draft["place"], line: Draft["place"]): void {
  takeFor(left, "pressure", "psi");
  takeFor(right, "temperature", "F");
  [left.place, right.place] = [place, line];
  [left.settled, right.settled] = [true, true];
}

/**
 * "70 over 54 on the low side, 318 over 122 on the high": a side has one pressure, so what stands under it is how warm
 * its line is. "head 300 over 92" alone may as well be both gauges.
 */
export function overItsLine(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  if (units === "si") return;
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || right.index !== left.index + 2) return;
    if (items[left.index + 1]?.text !== "over" || !isBare(left) || !isBare(right)) return;
    if (left.value < apart * right.value) return;
    const ahead = named(items, left.index - 1, -1)?.label?.place;
    const place = ahead ?? named(items, right.index + 1, 1)?.label?.place;
    if (place === "suction") {
      if (within(left.value, gaugePsi.suction) && within(right.value, lineF.suction))
        asPair(left, right, "suction", "suction");
      return;
    }
    if (!isHigh(place) || !within(left.value, gaugePsi.high)) return;
    const low = drafts.some((one) => one !== right && one.place === "suction");
    if (ahead !== undefined && place === "discharge" && !low) return;
    if (!within(right.value, lineF.liquid) && right.value < warmth.discharge) return;
    if (right.value <= warmth.liquid) asPair(left, right, place, "liquid");
    else if (right.value >= warmth.discharge) asPair(left, right, place, "discharge");
  });
}
