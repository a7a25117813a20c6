import { type Item, itemKind, newItem } from "./item.ts";

const sides = /^(?:suction|liquid|discharge)$/;

function isBare(item: Item | undefined): boolean {
  return item?.kind === itemKind.number && item.unit === undefined && item.owner === undefined;
}

/** Is the name of a side with a figure of its own here? */
function ownFigure(items: readonly Item[], at: number): boolean {
  const place = items[at]?.label?.place;
  return place !== undefined && sides.test(place) && isBare(items[at + 1]);
}

/**
 * "118/365 suction 52 liquid 98": behind both gauges each side's name leads its own figure, so none of them
 * names the pair. A comma is put where it was left out.
 */
export function pairThenLines(items: Item[]): void {
  for (let at = 0; at + 6 < items.length; at++) {
    const [left, stroke, right] = items.slice(at, at + 3);
    if (!isBare(left) || !/^(?:\/|over)$/.test(stroke?.text ?? "") || !isBare(right)) continue;
    const ends = items[at + 7];
    const closed = ends === undefined || !isBare(ends);
    if (!ownFigure(items, at + 3) || !ownFigure(items, at + 5) || !closed) continue;
    if (items[at + 3]?.label?.place === items[at + 5]?.label?.place || right === undefined)
      continue;
    items.splice(at + 3, 0, newItem(itemKind.sign, right.to, right.to, ","));
  }
}
