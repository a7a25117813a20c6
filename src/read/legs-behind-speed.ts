import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** Legs of one motor are within a fifth of each other unless one is lost; common practice, no source. */
const even = 0.8;
/** A; what a bare row behind a drive's speed can be, for volts begin above it; common practice, no source. */
const mostAmps = 90;

const turns = (draft: Draft | undefined): boolean =>
  draft?.unit?.dimension === "frequency" ||
  draft?.unit?.dimension === "speed" ||
  draft?.named === "frequency" ||
  draft?.named === "rotational_speed";

/** The share of the speed that a row without strokes is at most: nearer it could be more speeds; our choice, no source. */
const half = 0.5;
const between = /^(?:now|and|on|at|the|each|all|across|legs|leads|phases|lines|,|:|-)$/;
const ofLegs = /^(?:legs|leads|phases|lines)$/;

function isBare({ unit, named, hint, points, place, rating }: Draft): boolean {
  const free = [unit, named, points, place, rating].every((one) => one === undefined);
  return free && (hint === undefined || hint === "current");
}

/** Are they told right behind one another, all with strokes or all without? */
function isRow(items: readonly Item[], row: readonly Draft[], stroke: boolean): boolean {
  return row.slice(1).every(({ index }, at) => {
    const gap = items.slice((row[at]?.index ?? 0) + 1, index).map(({ text }) => text);
    return stroke ? gap.join() === "/" : gap.every((text) => /^(?:,|and|n|&)$/.test(text));
  });
}

/**
 * "hz 52 14.4/14.6/14.3", "1140rpm 7.9/7.8/8.0", "ramped to 70hz 9.8 9.9 9.7 on the leads": behind what
 * a motor turns at the even three are its legs, no more speeds.
 */
export function legsBehindSpeed(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((first, order) => {
    const speed = drafts[order - 1];
    const row = drafts.slice(order, order + 3);
    const last = row[2];
    if (!turns(speed) || speed === undefined || last === undefined || !row.every(isBare)) return;
    const lead = items.slice(speed.index + 1, first.index);
    const stroked = isRow(items, row, true);
    const told = [...lead, ...items.slice(last.index + 1, last.index + 4)].some(({ text }) =>
      ofLegs.test(text),
    );
    if (!lead.every(({ text }) => between.test(text))) return;
    if (!stroked && !isRow(items, row, false)) return;
    const values = row.map(({ value }) => value);
    const most = Math.max(...values);
    const share = stroked || told ? even : half;
    if (Math.min(...values) / most < even || most > mostAmps || most > speed.value * share) return;
    for (const draft of row) {
      draft.unit = unitCalled("A");
      draft.assumedUnit = true;
      draft.assumedQuantity = true;
    }
  });
}
