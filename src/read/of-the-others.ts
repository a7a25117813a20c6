import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { ratio } from "./near-value.ts";
import { otherPoints, othersTold, rows } from "./other-points.ts";

const electric: ReadonlySet<string> = new Set([
  "insulation_resistance",
  "winding_resistance",
  "voltage",
  "current",
  "diode_drop",
  "resistance",
  "capacitance",
]);

function isBare(draft: Draft, items: readonly Item[]): boolean {
  if (draft.over || draft.same || items[draft.index]?.kind !== itemKind.number) return false;
  const { unit, named, hint, place, points, subject, rating } = draft;
  return [unit, named, hint, place, points, subject, rating].every((one) => one === undefined);
}

/** The pair of the three that has no value yet, where the two others have one. */
function lastPair(like: Reading, context: Context): readonly string[] | undefined {
  const row = rows.find((one) => like.points?.every((point) => one.includes(point)) === true);
  if (row === undefined || like.points?.length !== 2) return undefined;
  const done = context.readings
    .slice(-3)
    .filter(({ quantity, subject }) => quantity === like.quantity && subject === like.subject)
    .map(({ points }) => [...(points ?? [])].sort().join());
  const [a = "", b = "", c = ""] = row;
  const open = [
    [a, b],
    [b, c],
    [a, c],
  ].filter((pair) => !done.includes([...pair].sort().join()));
  return open.length === 1 ? open[0] : undefined;
}

/** The two points of three that have no value yet, where one was read last. */
function pointsOpen({ readings }: Context): readonly (readonly string[])[] {
  const last = readings.at(-1);
  const [first = "", second] = last?.points ?? [];
  const row = rows.find((one) => one.includes(first) && !one.includes("C"));
  const before = readings.at(-2);
  if (row === undefined || (second !== undefined && second !== "ground")) return [];
  if (before?.quantity === last?.quantity && before?.points !== undefined) return [];
  const open = row.filter((point) => point !== first);
  return open.map((point) => (second === undefined ? [point] : [point, second]));
}

/**
 * "the other two are 1.8", "482 and 478 on the others", "and the last pair's 1.7": what was not named in
 * the row that is being measured, measured like the last of it. Its points only where one is left, or one value is of both.
 */
export function ofTheOthers(
  list: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const like = context.readings[context.readings.length - 1];
  if (like === undefined || like.rating !== undefined || !electric.has(like.quantity)) return;
  // "the other two are .85 and .9" behind one fan motor's 0.9 amps, and nothing else
  if (like.points === undefined && like.subject === undefined && context.latest !== 1) return;
  const bare = list.filter((draft) => isBare(draft, items));
  if (bare.length === 0 || bare.length > 2 || bare.length !== list.length) return;
  const words = items.map(({ text }) => text).join(" ");
  const count = othersTold(words);
  if (count === 0 || bare.length > count) return;
  const wide = like.quantity === "insulation_resistance";
  const near = bare.every((draft) => {
    const far = ratio(draft.value, like);
    return wide || (far > 1 / 3 && far < 3);
  });
  if (!near) return;
  const pair = count === 1 ? lastPair(like, context) : undefined;
  if (count === 1 && pair === undefined && !/\bpair|winding\b/.test(words)) return;
  const both = count === 2 && bare.length === 1 ? otherPoints(items, context, []) : undefined;
  const left = pointsOpen(context);
  for (const draft of bare) {
    draft.quantity = like.quantity;
    draft.named = like.quantity;
    draft.unit = unitCalled(like.figure.unit);
    draft.assumedUnit = draft.unit !== undefined;
    draft.kind ??= like.kind;
    draft.place ??= like.at;
    if (pair !== undefined) draft.points = [pair];
    else if (both !== undefined) draft.points = both;
    const point = left[bare.indexOf(draft)];
    if (point !== undefined && bare.length === 2) {
      draft.points = [point];
      draft.assumedPoints = true;
    }
    if (like.points !== undefined) draft.subject = like.subject;
    draft.count = bare.length === 1 ? count : 1;
  }
}
