import type { UnitHabit } from "../model.ts";
import { bothLinesAt } from "./both-lines.ts";
import { type Draft, isUntold } from "./draft.ts";
import { airBehind } from "./gauges-shape.ts";
import { type Item, itemKind } from "./item.ts";
import { linesOfPair } from "./lines-of-pair.ts";

type Range = readonly [low: number, high: number];

/** psi and bar at both sides of a machine that runs, and how much higher the high side is at least. Common practice, no source. */
export const lowSide: Readonly<Record<UnitHabit, Range>> = { us: [15, 200], si: [1.5, 14] };
export const highSide: Readonly<Record<UnitHabit, Range>> = { us: [100, 650], si: [11, 45] };
export const leastRatio = 1.7;
/** What a freezer's low side goes down to, where the gas's heat is told beside it. Common practice, no source. */
const leastFrozen: Readonly<Record<UnitHabit, number>> = { us: 1, si: 0.1 };

/** Two voltages of one supply, as plates give them: no gauges. */
const supplies = /^(?:110|115|120)\/(?:208|220|230|240)$|^(?:265|277)\/(?:460|480)$|^(?:347)\/600$/;

function bare(draft: Draft | undefined): draft is Draft {
  return draft !== undefined && !draft.gone && isUntold(draft);
}

/** bar at either side where the unit was said, with what no room is cooled by told apart. Common practice, no source. */
const barLow: Range = [0.1, 14];
const barHigh: Range = [6, 140];
/** How much higher the high side is at least, where bar was said: a hold's two figures are nearer. Our choice, no source. */
const leastOfBars = 1.3;

/** "4,1/15,3 bar": both sides of a machine, whatever was told before; a hold's two figures are near each other. */
function barPair(left: Draft, right: Draft | undefined, items: readonly Item[]): boolean {
  if (right === undefined || right.gone || right.index !== left.index + 2) return false;
  if (!/^(?:\/|over)$/.test(items[left.index + 1]?.text ?? "")) return false;
  if (items[left.index - 1]?.text === "/" || items[right.index + 1]?.text === "/") return false;
  if (right.unit?.figure !== "bar" || !/^(?:bar|undefined)$/.test(`${left.unit?.figure}`))
    return false;
  const told = [left, right].some((one) => one.rating ?? one.after ?? one.points);
  const named = left.before.some((index) => items[index]?.label?.hint === "pressure");
  if (told || named || items.some(({ label, text }) => label?.thing === "pump" || text === "pump"))
    return false;
  const [low, high] = [left.value, right.value];
  return (
    low >= barLow[0] &&
    low <= barLow[1] &&
    high >= barHigh[0] &&
    high <= barHigh[1] &&
    high >= low * leastOfBars
  );
}

function onGauges(left: Draft, right: Draft): void {
  for (const draft of [left, right]) {
    draft.named = "pressure";
    draft.hint = undefined;
    draft.component = false;
  }
  left.place = "suction";
  right.place = "discharge";
}

function isPair(items: readonly Item[], left: Draft, right: Draft): boolean {
  const bars = (at: number, step: number): Item | undefined =>
    items[at]?.text === "|" ? items[at + step] : items[at];
  const joint = items[left.index + 1];
  // "comp 1 126 366 sh 10", "comp1 | 126 | 366 | sh 10": a row, first of all the machine
  if (joint === items[right.index] || (joint?.text === "|" && right.index === left.index + 2))
    return (
      bars(left.index - 1, -1)?.kind === itemKind.subject &&
      bars(right.index + 1, 1)?.kind === itemKind.label &&
      hasHeat(items)
    );
  if (right.index !== left.index + 2 || !/^(?:\/|over)$/.test(joint?.text ?? "")) return false;
  if (items[right.index + 1]?.text === "/" || items[left.index - 1]?.text === "/") return false;
  return !supplies.test(`${left.value}/${right.value}`);
}

export function hasHeat(items: readonly Item[]): boolean {
  return items.some(
    ({ label }) => label?.quantity === "superheat" || label?.quantity === "subcooling",
  );
}

const whole =
  /^(?:compressor|circuit|system|stage|rtu|ahu|unit|odu|ou|rack|chiller|hp|cu|ac|rooftop)(?:\b|\d)/i;
const runs = /^(?:running|runs|ran|run|pressures?|gauges?)$/;

/** A machine or its running right before, or the heat of the gas, the split, its amps said beside. */
function told(items: readonly Item[], left: Draft): boolean {
  for (let at = left.index - 1; at >= 0 && at >= left.index - 3; at--) {
    const item = items[at];
    if (item?.kind === itemKind.number) break;
    if (item?.kind === itemKind.subject && whole.test(item.subject ?? "")) return true;
    if (runs.test(item?.text ?? "")) return true;
  }
  if (hasHeat(items) || items.some(({ label }) => label?.quantity === "temperature_difference"))
    return true;
  if (isRowBehind(items, left) || isBehindFigure(items, left)) return true;
  if (left.value >= leastAlone && airBehind(items, left.index)) return true;
  // "24 sst, 26/210"
  if (items.some(({ label }, at) => at < left.index && label?.place === "suction_saturation"))
    return true;
  if (
    isBehindRow(items, left) ||
    (first(items, left) && (weatherBehind(items, left) || boxBehind(items, left)))
  )
    return true;
  if (isBehindDeed(items, left) || isBehindSpeed(items, left)) return true;
  const lines = lineBehind(items, left) || bothLinesAt(items) > 0;
  if (first(items, left)) return lines || alone(items, left) || isGasNamed(items);
  // "410 system, 118/340"
  return items[left.index - 1]?.kind === itemKind.sign && isGasNamed(items);
}

const gas = /^(?:22|32|134a?|404a?|407[acf]?|410a?|44[89]a?|454[bc]?|507a?|513a?)$/;

/** Is it told what gas is in it? */
function isGasNamed(items: readonly Item[]): boolean {
  return items.some(({ owner, text }) => owner === "<letters and digits>" && gas.test(text));
}

/** psi that no size and no weight is paired with so; V that a capacitor stands. Common practice, no source. */
const leastAlone = 55;
const ratings: ReadonlySet<number> = new Set([370, 440]);

/** "Somebody been adding gas. 116 / 409": a sentence of nothing but the pair. */
function alone(items: readonly Item[], left: Draft): boolean {
  const right = items[left.index + 2];
  const now = items[left.index + 3]?.text === "now" ? 1 : 0;
  const end = items[left.index + 3 + now];
  // "118/340 before I shut it down"
  const when = /^(?:before|when|while|until)$/.test(end?.text ?? "");
  const ends = end === undefined || end.kind === itemKind.line || end.text === "." || when;
  return ends && left.value >= leastAlone && !ratings.has(right?.value ?? 370);
}

/** The pair begins the message or a sentence of it. */
function first(items: readonly Item[], left: Draft): boolean {
  const now = items[left.index - 1]?.text === "now";
  const before = items[left.index - (now ? 2 : 1)];
  if (before === undefined || before.kind === itemKind.line || before.text === ".") return true;
  if (before.text === "," && saysNothing(items.slice(0, left.index - (now ? 2 : 1)))) return true;
  // "cleaned the coil, now 121/331", "coil washed 118/325"
  return (now && before.text === ",") || before.owner === "<what was done>";
}

/** "beats me, 118/340": words that name nothing here. */
function saysNothing(items: readonly Item[]): boolean {
  return items.every(
    ({ kind, label, unit, text }) =>
      (kind === itemKind.word && label === undefined && unit === undefined) || text === ",",
  );
}

const deed =
  /^(?:replac|swap|chang|install|fitt|clean|wash|charg|reset|found|new$|put|threw|stuck|went|add|blown|popp|used|order|pull|need|get$|got$)/;

/** "…, 118/355, line temps 54 and 97": the warmth of both lines behind the clause of the pair. */
function lineTempsBehind(items: readonly Item[], left: Draft): boolean {
  const behind = items.slice(left.index + 4, left.index + 7).map(({ text }) => text);
  return /^(?:line|pipe)s?(?: temps?| temperatures?)?\b/.test(behind.join(" "));
}

/** "replaced the 45/5 cap, 113/375": beside what was done a clause of nothing but the pair. */
function isBehindDeed(items: readonly Item[], left: Draft): boolean {
  const right = items[left.index + 2];
  const apart = /^(?:[,;.-]|and|now)$/;
  const next = items[left.index + 3];
  const ends = next === undefined || next.kind === itemKind.line || apart.test(next.text);
  const before = items[left.index - 1];
  if (!ends || (before !== undefined && !apart.test(before.text))) return false;
  if (left.value < leastAlone || ratings.has(right?.value ?? 370)) return false;
  return items.some(({ text }) => deed.test(text)) || lineTempsBehind(items, left);
}

/** How many times the figure before it the first of a pair is at least, to be no more of its row. Our choice, no source. */
const apart = 3;

/** "comp 2 amps 17.4/17.6/17.3 132/389": of a machine that was named, far above the figure right before the pair. */
function isBehindFigure(items: readonly Item[], left: Draft): boolean {
  const before = items.slice(0, left.index);
  const named = before.some((item) => whole.test(item.subject ?? ""));
  const at = before.findLastIndex(
    (item) => !/^[,.;]$/.test(item.text) && item.kind !== itemKind.line,
  );
  const last = before[at];
  const figure = last?.kind === itemKind.unit ? before[at - 1] : last;
  if (!named || figure?.kind !== itemKind.number || left.value < leastAlone) return false;
  const parted = figure.unit !== undefined && at < left.index - 1;
  return parted || left.value > figure.value * apart;
}

/** "running 60 hz, 8.2/27.1": behind what the machine turns at. */
function isBehindSpeed(items: readonly Item[], left: Draft): boolean {
  const comma = items[left.index - 1]?.text === "," ? 1 : 0;
  return items[left.index - 1 - comma]?.unit?.figure === "Hz";
}

/** How near each other the legs of one row are, as a share; common practice, no source. */
const near = 0.25;

/** "amps 32.9 33.3 32.6, 126/381": behind the comma of three legs stroked figures are no more of them. */
function isBehindRow(items: readonly Item[], left: Draft): boolean {
  if (items[left.index - 1]?.text !== ",") return false;
  const row = items.slice(Math.max(0, left.index - 5), left.index - 1);
  const legs = row.slice(-3).map(({ kind, value }) => (kind === itemKind.number ? value : 0));
  if (row.length < 3 || row.some(({ text }) => text === "/")) return false;
  const [least, most] = [Math.min(...legs), Math.max(...legs)];
  return least > 0 && most - least <= most * near && left.value > most;
}

/** "118/340, its 88 out": the weather is told beside what a machine runs at. */
function weatherBehind(items: readonly Item[], left: Draft): boolean {
  return items
    .slice(left.index + 3)
    .some(({ text, label }) => label?.place === "outdoor_air" || /^(?:out|outside)$/.test(text));
}

/** "21 over 170, box 49": the warmth of the box is told beside what its machine runs at. */
function boxBehind(items: readonly Item[], left: Draft): boolean {
  return items.slice(left.index + 3).some(({ label }) => label?.place === "box");
}

/** "117/393 amps 14.1/14.2/14.3": a meter's name and its figures right behind the pair. */
function isRowBehind(items: readonly Item[], left: Draft): boolean {
  const [meter, value] = items.slice(left.index + 3, left.index + 5);
  return (
    left.value >= leastAlone &&
    meter?.kind === itemKind.unit &&
    meter.unit !== undefined &&
    value?.kind === itemKind.number
  );
}

/** "116/409, suct line 55, liquid 97", "118/365 suct is at 52": lines with their figures. */
function lineBehind(items: readonly Item[], left: Draft): boolean {
  return items.some(({ label }, at) => {
    if (at <= left.index || !/^(?:suction|liquid|discharge)$/.test(label?.place ?? ""))
      return false;
    let value = at + 1;
    while (/^(?:is|was|at|now)$/.test(items[value]?.text ?? "")) value++;
    return [at - 1, value].some(
      (next) => next > left.index + 2 && items[next]?.kind === itemKind.number,
    );
  });
}

const even = /^(?:flat|equalized|equalised|equalizing|equal|even|standing)$/;

/** "ckt b flat 168/171": both sides of a machine that stands. */
function stands(items: readonly Item[], left: Draft, right: Draft, low: Range): boolean {
  if (items[left.index + 1]?.text !== "/" || !items.some(({ text }) => even.test(text)))
    return false;
  const near = Math.abs(left.value - right.value) <= left.value * 0.1;
  return near && left.value >= low[0] * 3 && left.value <= low[1] * 1.5;
}

/** "rtu4 118/342", "comp 1 126 366 sh 10", "running 118 over 340": suction over head, where nothing else comes in such a pair. */
export function gaugePair(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  drafts.forEach((left, order) => {
    const right = drafts[order + 1];
    if (right !== undefined && barPair(left, right, items)) onGauges(left, right);
    if (!bare(left) || !bare(right) || !isPair(items, left, right)) return;
    // "washed the coil. 121/331 now": another sentence tells of the part
    if (right.component || (left.component && !first(items, left))) return;
    const [low, high] = [lowSide[units], highSide[units]];
    const fits =
      left.value >= (hasHeat(items) ? leastFrozen[units] : low[0]) &&
      left.value <= low[1] &&
      right.value >= high[0] &&
      right.value <= high[1] &&
      right.value >= left.value * leastRatio;
    if (!(fits && told(items, left)) && !stands(items, left, right, low)) return;
    for (const draft of [left, right]) draft.named = "pressure";
    left.component = false;
    left.place = "suction";
    right.place = "discharge";
    right.subject = left.subject ?? right.subject;
    left.state = undefined;
    right.state = undefined;
    if (fits) linesOfPair(drafts, units, [left, right], items);
  });
}
