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

/** "hz 52 14.4/14.6/14.3", "1140rpm 7.9/7.8/8.0": behind what a motor turns at the even three are its legs, no more speeds. */
export function legsBehindSpeed(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((first, order) => {
    const speed = drafts[order - 1];
    const row = drafts.slice(order, order + 3);
    if (!turns(speed) || speed === undefined || speed.sentence !== first.sentence) return;
    const bare = row.every(
      ({ unit, named, hint, points, place, rating }) =>
        unit === undefined &&
        named === undefined &&
        (hint === undefined || hint === "current") &&
        points === undefined &&
        place === undefined &&
        rating === undefined,
    );
    const stroked = [1, 2].every(
      (at) =>
        items[(row[at]?.index ?? 0) - 1]?.text === "/" && row[at]?.index === first.index + 2 * at,
    );
    const values = row.map(({ value }) => value);
    const near = Math.min(...values) / Math.max(...values) >= even;
    if (!bare || !stroked || !near || Math.max(...values) > mostAmps) return;
    if (Math.max(...values) > speed.value * even) return;
    for (const draft of row) {
      draft.unit = unitCalled("A");
      draft.assumedUnit = true;
      draft.assumedQuantity = true;
    }
  });
}
