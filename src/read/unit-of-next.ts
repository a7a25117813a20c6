import type { Dimension } from "../quantities/quantity.ts";
import { classOf } from "./carrier.ts";
import { highSide, leastRatio, lowSide } from "./gauge-pair.ts";
import { type Item, itemKind, newItem } from "./item.ts";
import { fits } from "./kinds.ts";
import { tellsHow } from "./unsaid-stops.ts";
import { role } from "./word.ts";

/** Volts at least between two legs of a supply. Common practice, no source. */
const leastVolts = 90;

/** What a gauge or a thermometer at a place of the machine shows. */
const atPlaces: ReadonlySet<Dimension> = new Set<Dimension>([
  "pressure",
  "low_pressure",
  "inches_of_mercury",
  "inches_of_water",
  "temperature",
  "mass",
  "percent",
]);

/** "L1-L2 478 amps 22": between two legs there are volts. */
function acrossLegs(item: Item, points: Item["points"]): boolean {
  const pair = points?.every(
    (one) => one.length === 2 && one.every((leg) => /^(?:L[123]|N|phase [ABC])$/.test(leg)),
  );
  return pair === true && item.value >= leastVolts;
}

/** "T1-T3 1,91 amps L1 11,4": between two ends of a winding nothing flows. */
function windingPair(points: Item["points"]): boolean {
  return (
    points?.every(
      (one) => one.length === 2 && one.every((end) => /^(?:T[123]|[UVW])$/.test(end)),
    ) === true
  );
}

/** Both sides by the water that runs through, where their words are no names yet. */
function ofTheWater(items: readonly Item[], i: number): void {
  for (const at of [i - 3, i - 1]) {
    const side = items[at];
    if (side === undefined || side.label?.place !== undefined) continue;
    const [into, out] = [/^in$/.test(side.text), /^(?:out|lvg|leaving)$/.test(side.text)];
    if (!into && !out) continue;
    side.kind = itemKind.label;
    side.label = { place: into ? "water_in" : "water_out", hint: "temperature" };
  }
}

/** "in 120 out 140 gpm 30": degrees on the way out of something, and then what flows. */
function flowOfNext(items: readonly Item[], i: number): boolean {
  const side = /^(?:in|out|lvg|leaving)$/.test(items[i - 1]?.text ?? "");
  return side && items[i - 2]?.kind === itemKind.number;
}

function isBare(item: Item | undefined): boolean {
  return item?.kind === itemKind.number && item.unit === undefined && item.owner === undefined;
}

/** "118 psi 12 sh 340 psi", "612 on the bus 7.9 amps": a name behind a figure that has none before it is that figure's. */
function isBehind(items: readonly Item[], at: number): boolean {
  let i = at - 1;
  if (items[i]?.text === "the") i--;
  if (/^(?:on|at|across)$/.test(items[i]?.text ?? "")) i--;
  return items[i]?.kind === itemKind.number && classOf(items[i - 1]) === "";
}

/** Can what names the figure not be measured in this dimension? */
function strange(items: readonly Item[], at: number, dimension: Dimension): boolean {
  const name = items[at];
  if (name === undefined || name.owner !== undefined || isBehind(items, at)) return false;
  if (name.kind === itemKind.unit) return name.unit?.dimension !== dimension;
  const { quantity, hint, place } = name.label ?? {};
  // "speed 80 Hz 15,3 15,4 A"
  if (quantity === "rotational_speed" && dimension === "frequency") return false;
  if (quantity !== undefined) return !fits(quantity, dimension);
  // a drive's output has volts, amps and hertz
  if (place === "drive_output" || (hint !== undefined && fits(hint, dimension))) return false;
  return place !== undefined && !atPlaces.has(dimension);
}

/** "L3 17.0 volts 461 459": no leg of a supply has so few, and those ahead have as many as one. */
function tooFew(items: readonly Item[], i: number, dimension: Dimension): boolean {
  const [item, next] = [items[i], items[i + 1]];
  if (dimension !== "voltage" || item === undefined || next === undefined) return false;
  const named = items[i - 1]?.kind === itemKind.points || isBare(items[i - 1]);
  const row = isBare(items[i - 2]) || isBare(items[i - 1]);
  return named && row && item.value < leastVolts && next.value >= leastVolts && isBare(next);
}

/** psi of either side at least, where a row of another meter follows. Common practice, no source. */
const leastLow = 40;
const leastHigh = 150;

/** "117/393 amps 14.1/14.2/14.3", "118/340 megs 210/205": two gauges, and then what the next row is of. */
function behindGauges(items: readonly Item[], i: number, dimension: Dimension): boolean {
  if (dimension !== "current" && dimension !== "resistance") return false;
  const [low, joint, high] = items.slice(Math.max(0, i - 2), i + 1);
  if (!isBare(low) || low === undefined || high === undefined) return false;
  if (!/^(?:\/|over)$/.test(joint?.text ?? "") || items[i - 3]?.text === "/") return false;
  const [, mostLow] = lowSide.us;
  const [, mostHigh] = highSide.us;
  return (
    low.value >= leastLow &&
    low.value <= mostLow &&
    high.value >= leastHigh &&
    high.value <= mostHigh &&
    high.value >= low.value * leastRatio
  );
}

/** "amps L1 13.7 L2 13.9 L3 13.6 megs 257, 318, 271": the row has its unit before it, so what stands behind its last leads. */
function inRowOf(items: readonly Item[], i: number, dimension: Dimension): boolean {
  let points = 0;
  for (let at = i - 1; at >= 0; at--) {
    const item = items[at];
    if (item?.kind === itemKind.points) points++;
    else if (item?.kind === itemKind.unit)
      return points > 1 && item.unit !== undefined && item.unit.dimension !== dimension;
    else if (!isBare(item) && !/^[,:]$/.test(item?.text ?? "")) return false;
  }
  return false;
}

/** Does the unit behind the figure at `i` lead what follows? */
function leadsNext(items: readonly Item[], i: number, moved: boolean): boolean {
  const item = items[i];
  const dimension = item?.unit?.dimension;
  if (item === undefined || dimension === undefined || item.unitFrom <= item.numberTo) return false;
  if (dimension === "time" || dimension === "length" || item.to - item.unitFrom < 3) return false;
  let from = i - 1;
  while (
    isBare(items[from]) ||
    (items[from]?.text === "/" && isBare(items[from - 1])) ||
    ((items[from]?.roles ?? 0) & (role.is | role.now)) !== 0
  )
    from--;
  const legs =
    dimension === "current" &&
    (acrossLegs(item, items[from]?.points) || windingPair(items[from]?.points));
  const flow = item.unit?.figure === "gpm" && flowOfNext(items, i);
  const odd =
    moved ||
    legs ||
    flow ||
    behindGauges(items, i, dimension) ||
    inRowOf(items, i, dimension) ||
    strange(items, from, dimension);
  if (!odd && !tooFew(items, i, dimension)) return false;
  const next = items[i + 1];
  // "bus 612 7.9 amps out": what a drive puts out, nothing that is out of order
  if (next?.text === "out" && /^(?:current|voltage|frequency)$/.test(dimension)) return false;
  if (next?.kind === itemKind.points) return isBare(items[i + 2]);
  if (next === undefined || next.glued) return false;
  return (
    isBare(next) ||
    (next.kind === itemKind.number ? leadsNext(items, i + 1, true) : tellsHow(items, i + 1))
  );
}

/** "suction 165 head 170 amps 7", "sup 55 amps good": the unit that what stands before cannot have leads what follows. */
export function unitOfNext(items: Item[]): void {
  for (let i = 0; i < items.length; i++) {
    const item = items[i];
    if (item?.kind !== itemKind.number || !leadsNext(items, i, false)) continue;
    if (item.unit?.figure === "gpm") ofTheWater(items, i);
    splitOff(items, i);
    for (let at = i + 2; items[at]?.kind === itemKind.number && leadsNext(items, at, true); at += 2)
      splitOff(items, at);
  }
}

/** Makes the unit behind the figure at `i` an item of its own. */
export function splitOff(items: Item[], i: number): void {
  const item = items[i];
  if (item === undefined) return;
  const unit = newItem(itemKind.unit, item.unitFrom, item.to, item.unit?.figure ?? "");
  unit.unit = item.unit;
  item.unit = undefined;
  item.unitFrom = -1;
  item.to = item.numberTo;
  items.splice(i + 1, 0, unit);
  // "amps good": told in words
  if (tellsHow(items, i + 2)) unit.kind = itemKind.word;
}

/** "10:25 HP 27,1 LP 6,0": behind an hour the letters are a gauge's, no motor is so big. */
export function hourThenGauge(items: Item[]): void {
  for (let i = 0; i + 1 < items.length; i++) {
    const item = items[i];
    if (item?.colon !== true || item.unit?.figure !== "hp") continue;
    splitOff(items, i);
    const gauge = items[i + 1];
    if (gauge === undefined) return;
    gauge.kind = itemKind.label;
    gauge.unit = undefined;
    gauge.label = { place: "discharge", hint: "pressure" };
  }
}
