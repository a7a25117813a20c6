import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/**
 * Outside diameters of refrigerant tube in mm, and as they are rounded when typed.
 * Source: EN 12735-1, from memory.
 */
const diameters: ReadonlySet<number> = new Set([
  6, 6.3, 6.35, 6.4, 9.5, 9.52, 9.53, 10, 12, 12.7, 15, 15.8, 15.88, 15.9, 16, 18, 19, 19.05, 19.1,
  22, 22.2, 22.22, 28, 28.58, 28.6, 34.9, 34.92, 41.3, 41.28,
]);

const liquid = /^(?:liquid|liq|ll|liqd)$/;
const gas = /^(?:gas|suction|suct|suc|vapor|vapour|sl|vap)$/;
const pipes =
  /^(?:pipe|pipes|piping|line|lines|lineset|line set|linesets|copper|tube|tubing|run|length|elbows|bends|pipework)$/;

function isSize(item: Item | undefined): item is Item {
  if (!freeNumber(item) || item.spoken) return false;
  if (item.unit !== undefined && item.unit.figure !== "mm" && item.unit.figure !== "in")
    return false;
  return item.fraction ? item.value < 4.2 : diameters.has(item.value);
}

/** The second size behind the one at `i`, over a joint and one name; -1 where there is none. */
function second(items: readonly Item[], i: number): number {
  for (let at = i + 1; at <= i + 4; at++) {
    const item = items[at];
    if (isSize(item)) return at;
    const text = textAt(items, at);
    if (!gas.test(text) && !liquid.test(text) && !/^(?:[/,x&-]|and|n|to|pipe|line)$/.test(text))
      return -1;
  }
  return -1;
}

/** Are pipes or their length spoken of around the two sizes? */
function pipesNear(items: readonly Item[], from: number, to: number): boolean {
  return items
    .slice(Math.max(0, from - 4), to + 6)
    .some(
      (item) =>
        pipes.test(item.text) ||
        item.label?.quantity === "length" ||
        (item.kind === itemKind.number && item.unit?.dimension === "length"),
    );
}

/** "liq 9,5 / gas 15,9", "lines 3/8 liq 7/8 suct", "6,4 and 12,7 pipes": the sizes of a pair of pipes. */
export const pipePairs: Rule = {
  name: "<liquid size> <gas size>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!isSize(item)) return;
      const at = second(items, i);
      const other = items[at];
      if (other === undefined || other.fraction !== item.fraction) return;
      const said = items
        .slice(Math.max(0, i - 1), at + 2)
        .filter(({ text }) => gas.test(text) || liquid.test(text)).length;
      const exact =
        !item.fraction && !Number.isInteger(item.value) && !Number.isInteger(other.value);
      if (!item.fraction && !exact && said > 0) return;
      if (said === 0 && item.value >= other.value) return;
      if (said < 2 && !pipesNear(items, i, at)) return;
      if (said === 2 && !item.fraction && !pipesNear(items, i, at)) return;
      const [from, end] = [around(items, i, -1), around(items, at, 1)];
      state(note, pipePairs.name, [from, end + 1], { kind: "note", about: "size" });
    });
  },
};

/** The name of a pipe right beside its size goes with it. */
function around(items: readonly Item[], i: number, step: -1 | 1): number {
  const text = textAt(items, i + step);
  return gas.test(text) || liquid.test(text) ? i + step : i;
}
