import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { takeFor } from "./recast.ts";

const gauge = /^(?:gauge|gauges|gage|gages)$/;
const line = /^(?:line|pipe|tube|line temp)$/;

/** Where the words "on the gauge" stand right behind a figure. */
function behind(items: readonly Item[], { index }: Draft, noun: RegExp): boolean {
  const [on, the, name] = items.slice(index + 1, index + 4).map(({ text }) => text);
  if (!/^(?:on|at|by|off)$/.test(on ?? "")) return false;
  return noun.test(/^(?:the|my|its|that)$/.test(the ?? "") ? (name ?? "") : (the ?? ""));
}

const isBare = ({ unit, points, action }: Draft): boolean =>
  unit === undefined && points === undefined && action === undefined;

/** psi of a discharge at least, and F of its line at least. Common practice, no source. */
const high = { psi: 180, warm: 120 } as const;

/** "340 on the gauge 190 on the line": the pressure of a side, and how warm its line is. */
export function gaugeThenLine(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  if (units === "si") return;
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || !isBare(left) || !isBare(right)) return;
    if (!behind(items, left, gauge) || !behind(items, right, line)) return;
    const side = left.place ?? right.place;
    takeFor(left, "pressure", "psi");
    takeFor(right, "temperature", "F");
    // no liquid line is as warm as what the compressor gives off
    const hot = left.value >= high.psi && right.value >= high.warm;
    left.place = side === "liquid" && hot ? "discharge" : side;
    right.place = hot && (side === undefined || side === "liquid") ? "discharge" : side;
    if (hot && left.place === undefined) left.place = "discharge";
  });
}
