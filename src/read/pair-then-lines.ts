import { isGauges } from "./gauges-shape.ts";
import { type Item, itemKind, newItem } from "./item.ts";

const sides = /^(?:suction|liquid|discharge)$/;

function isBare(item: Item | undefined): boolean {
  return item?.kind === itemKind.number && item.unit === undefined && item.owner === undefined;
}

/** Is the name of a side with a figure of its own here? */
function ownFigure(items: readonly Item[], at: number): boolean {
  const place = items[at]?.label?.place;
  let value = at + 1;
  while (/^(?:is|at)$/.test(items[value]?.text ?? "")) value++;
  return place !== undefined && sides.test(place) && isBare(items[value]);
}

const hot = /^(?:discharge|disch|disc|dis|dischg|dlt|hot gas)$/;

/** "118/342 discharge 168 oat 81": the hot line's name leads the figure that is there for it alone. */
function hotLine(items: readonly Item[], at: number): boolean {
  if (!isGauges(items, at - 3) || !hot.test(items[at]?.text ?? "") || !ownFigure(items, at))
    return false;
  const next = items[at + 2];
  return !isBare(next) && !(next?.label?.place !== undefined && !isBare(items[at + 3]));
}

const leastLine = 4;

/** "126/350 line 54": the line that is not named leads its own figure; "line 1" would be a leg. */
function oneLine(items: readonly Item[], at: number): boolean {
  const name = items[at];
  const named = /^(?:line|pipe)$/.test(name?.text ?? "");
  const side = name?.label?.place === "suction" && /(?:line|pipe)$/.test(name.text);
  if (!isGauges(items, at - 3) || !(named || side)) return false;
  const figure = items[at + 1];
  return isBare(figure) && (figure?.value ?? 0) >= leastLine && !isBare(items[at + 2]);
}

/** "24 sst 26/210": the name is of the figure before it, and then both gauges stand. */
export function pairBehindSaturation(items: Item[]): void {
  for (let at = 1; at + 3 < items.length; at++) {
    const [value, name, low] = items.slice(at - 1, at + 2);
    if (!isBare(value) || name?.label?.place !== "suction_saturation" || low === undefined)
      continue;
    const [stroke, high] = items.slice(at + 2, at + 4);
    if (stroke?.text !== "/" || !isBare(low) || !isBare(high)) continue;
    if ((high?.value ?? 0) < 1.7 * low.value) continue;
    // "24 sst 26/210 defrost htrs 208v": of what stands behind it no gauge is told
    if (high !== undefined && items[at + 4]?.label?.component === true)
      items.splice(at + 4, 0, newItem(itemKind.sign, high.to, high.to, ","));
    items.splice(at + 1, 0, newItem(itemKind.sign, name.to, name.to, ","));
  }
}

function bothLines(items: readonly Item[], at: number): boolean {
  if (!ownFigure(items, at) || !ownFigure(items, at + 2) || isBare(items[at + 4])) return false;
  return items[at]?.label?.place !== items[at + 2]?.label?.place;
}

/**
 * "118/365 suction 52 liquid 98": behind both gauges each side's name leads its own figure, so none of them
 * names the pair. A comma is put where it was left out.
 */
export function pairThenLines(items: Item[]): void {
  for (let at = 0; at + 4 < items.length; at++) {
    const [left, stroke, right] = items.slice(at, at + 3);
    if (!isBare(left) || !/^(?:\/|over)$/.test(stroke?.text ?? "") || !isBare(right)) continue;
    const leads = /^(?:is|at)$/.test(items[at + 4]?.text ?? "") && ownFigure(items, at + 3);
    const apart =
      leads || hotLine(items, at + 3) || bothLines(items, at + 3) || oneLine(items, at + 3);
    if (right === undefined || !apart) continue;
    items.splice(at + 3, 0, newItem(itemKind.sign, right.to, right.to, ","));
  }
}
