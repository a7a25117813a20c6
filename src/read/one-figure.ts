import type { Reading } from "../model.ts";

/** "all three 0.4 meg": the readings beside one that were said with the same figure, itself among them. */
export function ofOneFigure(readings: readonly Reading[], one: Reading): readonly Reading[] {
  const at = readings.indexOf(one);
  let from = at;
  let to = at + 1;
  while (from > 0 && isSame(readings[from - 1], one)) from--;
  while (to < readings.length && isSame(readings[to], one)) to++;
  return at < 0 ? [one] : readings.slice(from, to);
}

/** The readings, of each figure only the first. */
export function firstOfFigures(readings: readonly Reading[]): readonly Reading[] {
  return readings.filter((one, at) => !isSame(readings[at - 1], one));
}

function isSame(a: Reading | undefined, b: Reading): boolean {
  return (
    a !== undefined &&
    a.points !== undefined &&
    b.points !== undefined &&
    a.points.join() !== b.points.join() &&
    a.quantity === b.quantity &&
    a.said === b.said &&
    JSON.stringify(a.spans) === JSON.stringify(b.spans) &&
    a.value === b.value
  );
}
