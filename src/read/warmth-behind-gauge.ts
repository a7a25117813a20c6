import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { ratio } from "./near-value.ts";

/** Degrees that a pipe or the air may lie from what it was when the test began. Our choice, no source. */
const apart = { us: 45, si: 25 } as const;
/** How far the pressure of a test in hand moves at most. Our choice, no source. */
const moved = 1.3;

const isBare = ({ unit, named, points, rating, over, gone, action }: Draft): boolean =>
  [unit, named, points, rating, action].every((one) => one === undefined) && !over && !gone;

/** The two that a nitrogen test began with: its pressure, and how warm it was. */
function testBefore({ readings }: Context): readonly [Reading, Reading] | undefined {
  const warmth = readings.findLast(({ quantity }) => quantity === "temperature");
  const at = readings.findLastIndex(({ quantity, at: place }) => quantity === "pressure" && !place);
  const gauge = readings[at];
  if (gauge === undefined || warmth === undefined) return undefined;
  return at >= readings.length - 3 && readings.slice(-3).includes(warmth)
    ? [gauge, warmth]
    : undefined;
}

/** "11:45 37,9 bar 23", "11:45 548 82" behind "N2 38 bar, 24 degrees": both of the test again. */
export function testAgain(drafts: readonly Draft[], context: Context): void {
  const [gauge, warm, ...more] = drafts;
  const before = testBefore(context);
  if (gauge === undefined || warm === undefined || more.length > 0 || before === undefined) return;
  const [was, warmth] = before;
  const pressed = gauge.unit === undefined ? isBare(gauge) : gauge.unit.dimension === "pressure";
  // "still 39.6 n 18c": its unit tells the one, so the other is the gauge
  const own = warm.unit?.dimension === "temperature" && gauge.unit === undefined;
  const warmed = isBare(own ? { ...warm, unit: undefined, named: undefined } : warm);
  if (!pressed || gauge.place !== undefined || !warmed || warm.place !== undefined) return;
  const told = Number(warmth.figure.number);
  const far = ratio(gauge.value, was);
  if (far > moved || far < 1 / moved) return;
  if (Math.abs(warm.value - told) > apart[context.units]) return;
  gauge.named ??= "pressure";
  warm.named = "temperature";
  warm.hint = undefined;
  warm.place = warmth.at;
}

/** F and Cel of a day on which a test stands. Our choice, no source. */
const days = { us: [0, 115], si: [-18, 46] } as const;

/** "n2 148 psi, was 150 at 5pm, 71 then 64 now": behind what a hold was and is, how warm it was and is. */
export function warmthsOfHold(
  drafts: readonly Draft[],
  items: readonly Item[],
  { units }: Context,
): void {
  const list = drafts.filter(({ gone }) => !gone);
  const [first, second] = list.slice(-2);
  const gauges = list.slice(0, -2);
  if (first === undefined || second === undefined || gauges.length === 0) return;
  const held = gauges.every(
    ({ place, points, unit, named }) =>
      place === undefined &&
      points === undefined &&
      (unit === undefined || unit.dimension === "pressure") &&
      (named === undefined || named === "pressure"),
  );
  const told = gauges.length > 1 || gauges[0]?.series !== undefined;
  const psi = gauges.some(({ unit }) => unit?.dimension === "pressure");
  if (!held || !told || !psi || ![first, second].every(isBare)) return;
  const gap = wordsFrom(items, first.index + 1, second.index);
  const now = second.now || /^(?:now|today)$/.test(items[second.index + 1]?.text ?? "");
  if (!/^(?:, )?(?:then|now|and|n|to|→|-)(?: now)?$/.test(gap) || !(now || gap.includes("now")))
    return;
  const [low, high] = days[units];
  const least = Math.min(...gauges.map(({ value }) => value));
  const warm = [first, second].every(
    ({ value }) => value >= low && value <= high && value * moved < least,
  );
  if (!warm || Math.abs(first.value - second.value) > apart[units]) return;
  for (const gauge of gauges) gauge.named ??= "pressure";
  for (const draft of [first, second]) {
    draft.named = "temperature";
    draft.hint = undefined;
    draft.subject = undefined;
    draft.unit = unitCalled(units === "us" ? "F" : "C");
    draft.assumedUnit = true;
  }
}

/** Cel of a liquid line. Common practice, no source. */
const liquidCel = { from: 5, to: 65 } as const;

/** "11:45 37,9 bar 23" behind "N2 38 bar at 10:15": far under the gauge of a test it is how warm it is. */
function ofTest(left: Draft, right: Draft, readings: readonly Reading[]): boolean {
  const was = readings.findLast(({ quantity, at }) => quantity === "pressure" && at === undefined);
  if (was === undefined || was !== readings.findLast(({ quantity }) => quantity === "pressure"))
    return false;
  const far = ratio(left.value, was);
  return (
    far < moved && far > 1 / moved && right.value < mostOfDay && right.value * moved < left.value
  );
}

/** Cel of a day on which a test stands. Our choice, no source. */
const mostOfDay = 45;

/** "liquid 25.1 bar 33": behind a line's own bar no other bar follows, but how warm it is; behind a head's nobody knows. */
export function warmthBehindBar(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || right.index !== left.index + 1 || !left.ownUnit) return;
    if (!/^(?:bar|MPa|kPa)$/.test(left.unit?.figure ?? "") || !isBare(right)) return;
    if (left.place === undefined && right.place === undefined && ofTest(left, right, readings)) {
      right.named = "temperature";
      return;
    }
    if (left.place !== "liquid" && left.place !== "discharge") return;
    const next = items[right.index + 1];
    if (right.place !== undefined && right.place !== left.place) return;
    if (next?.text === "," && items[right.index + 2]?.unit?.dimension === "pressure") return;
    const liquid =
      left.place === "liquid" && right.value >= liquidCel.from && right.value <= liquidCel.to;
    if (liquid) {
      right.named = "temperature";
      right.place = "liquid";
      right.hint = undefined;
    } else right.question = "quantity";
  });
}
