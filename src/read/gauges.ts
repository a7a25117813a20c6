import type { Draft } from "./draft.ts";
import { eachInPsi } from "./each-in-psi.ts";
import { type Item, itemKind, wordsFrom } from "./item.ts";
import { gaugeFarOver, lineF, within } from "./line-range.ts";
import { overGauges } from "./over-gauges.ts";

const sides: ReadonlySet<string> = new Set(["suction", "discharge", "liquid"]);

/** "118/50 on the suction", "low 118 @ 50": pressure and temperature of one side, in that order. */
export function sidePairs(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    const joint = left === undefined ? undefined : items[left.index + 1];
    if (left === undefined) return;
    const joined = right.index === left.index + 2 && (joint?.text === "/" || joint?.text === "@");
    if (!joined && !gaugeThenLine(items, left, right)) return;
    const bare = [left, right].every(
      (one) => one.points === undefined && one.named === undefined && one.rating === undefined,
    );
    const spoken = sideUnits(left, right);
    if (!bare || !spoken || items[right.index + 1]?.text === "/") return;
    dropOilAhead(items, left, right);
    if (left.place !== undefined && right.place !== undefined && left.place !== right.place) return;
    const place = left.place ?? right.place;
    if (
      place === undefined ||
      !sides.has(place) ||
      (left.place !== undefined && right.before.length > 0)
    )
      return;
    const saturated = /^(?:sat|saturated|saturation)$/.test(items[right.index + 1]?.text ?? "");
    left.place = place;
    right.place = !saturated
      ? place
      : place === "suction"
        ? "suction_saturation"
        : "discharge_saturation";
    left.named = "pressure";
    right.named = "temperature";
  });
}

/** psi of each side where its line's F stands right behind. Common practice, no source. */
const lowPsi = [15, 260] as const;
const highPsi = [90, 700] as const;

/** "suction 122 55 head 330 96": behind the gauge's own name its figure and at once that of its line. */
function gaugeThenLine(items: readonly Item[], left: Draft, right: Draft): boolean {
  if (right.index !== left.index + 1 || left.unit !== undefined || right.unit !== undefined)
    return false;
  const side = items[left.index - 1]?.label?.place;
  if (side === undefined || side !== left.place || !sides.has(side)) return false;
  if (items[right.index + 1]?.kind === itemKind.number || right.over || left.over) return false;
  // alone it may be two readings of one gauge
  const other = items.some(({ label }) => sides.has(label?.place ?? "") && label?.place !== side);
  if (!other) return false;
  const [psi, line] =
    side === "suction" ? ([lowPsi, lineF.suction] as const) : ([highPsi, lineF.liquid] as const);
  const apart = left.value >= gaugeFarOver * right.value;
  return within(left.value, psi) && within(right.value, line) && apart;
}

/** "oil came out clean, 118 / 52 suction": the oil was of the clause before. */
function dropOilAhead(items: readonly Item[], left: Draft, right: Draft): void {
  if (left.place !== "oil" || right.place === undefined || !sides.has(right.place)) return;
  if (items[left.index - 1]?.text !== ",") return;
  left.place = undefined;
  left.hint = undefined;
  left.before = [];
}

/** "suct 68 psi @ 52 f": no units, or those of a pressure and of a warmth. */
function sideUnits(left: Draft, right: Draft): boolean {
  if (left.unit === undefined) return right.unit === undefined;
  return left.unit.dimension === "pressure" && right.unit?.dimension === "temperature";
}

const gaugeNames: ReadonlySet<string> = new Set(["gauges", "gauge", "gages", "hoses", "needles"]);
const gaugeWord = /^(?:gauges|gauge|gages|gage|pressures|pressure|psi|psig|manifold|manifolds)$/;

export function bareGauge(draft: Draft): boolean {
  return (
    (draft.unit === undefined || draft.unit.dimension === "pressure") &&
    (draft.place === undefined || draft.place === "shell") &&
    (draft.named === undefined || draft.named === "pressure") &&
    draft.points === undefined &&
    draft.action === undefined &&
    draft.value >= 5 &&
    draft.value <= 700
  );
}

export function asGauge(draft: Draft, place: "suction" | "discharge" | undefined): void {
  draft.named = "pressure";
  if (place !== undefined) draft.place = place;
}

/** "88 and 262 on the gauges": named behind both. */
function onGauges(items: readonly Item[], from: number): boolean {
  const behind = wordsFrom(items, from, from + 3);
  return /^(?:on|at|by|per|off) (?:(?:the|my|our|his) )?(?:gauges?|gages?|manifold)\b/.test(behind);
}

/** "gauges 118 over 365", "gauges 88 and 305", "300 over 92": both sides, whichever is named first. */
export function gaugePair(items: readonly Item[], drafts: readonly Draft[]): void {
  const said = (draft: Draft): boolean =>
    items
      .slice(Math.max(0, draft.index - 5), draft.index)
      .some((item) => gaugeWord.test(item.text)) || onGauges(items, draft.index + 3);
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    const joint = left === undefined ? "" : (items[left.index + 1]?.text ?? "");
    if (left === undefined || right.index !== left.index + 2) return;
    if (eachInPsi(items, left, right)) {
      asGauge(left, "suction");
      asGauge(right, "discharge");
      return;
    }
    const over = joint === "over";
    const ofGas = over && overGauges(left, right, items);
    if (!ofGas && (!bareGauge(left) || !bareGauge(right) || left.value === right.value)) return;
    if (!over && !(said(left) && (joint === "and" || joint === "/" || joint === "&"))) return;
    if (!said(left) && !ofGas && (left.value < right.value * 1.4 || items.length > 12)) return;
    const low = left.value < right.value ? left : right;
    asGauge(low, "suction");
    asGauge(low === left ? right : left, "discharge");
    const item = items[right.index];
    if (item !== undefined) item.relation = "=";
  });
  if (!items.some((item) => gaugeNames.has(item.text))) return;
  for (const draft of drafts) {
    const word = items.findIndex(
      (item, at) => at < draft.index && at >= draft.index - 4 && gaugeNames.has(item.text),
    );
    if (word < 0 || !bareGauge(draft) || items[draft.index + 1]?.text === "wire") continue;
    const verbs = items
      .slice(word + 1, draft.index)
      .every((item) =>
        /^(?:at|are|is|both|sit|sits|stand|stands|read|reads|show|shows|around|about|equali[sz]ed|level|leveled|equal|even|met|came|come|out|off|only|stuck|there|here|:)$/.test(
          item.text,
        ),
      );
    if (verbs) asGauge(draft, undefined);
  }
}

/** psi at the low side of anything that has a superheat, and at its high side. Common practice, no source. */
const lowSide = [15, 260] as const;
const highSide = [90, 700] as const;

/** "118/345 sh 11 sc 9": both gauges, beside what was worked out from them. */
export function gaugesBesideHeat(items: readonly Item[], drafts: readonly Draft[]): void {
  const heats = drafts.filter(({ named }) => named === "superheat" || named === "subcooling");
  // "63 psi/238 psi SH 8; ckt 2 41/190 SH 33": a pair with its units says nothing of the next
  const others = drafts.filter((one) => !(one.ownUnit && one.unit?.dimension === "pressure"));
  if (heats.length === 0 || others.some(({ named }) => named === "pressure")) return;
  if (others.some(({ place }) => place === "suction" || place === "discharge")) return;
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || right.index !== left.index + 2) return;
    const joint = items[left.index + 1]?.text ?? "";
    if (!/^(?:\/|over)$/.test(joint) || !bareGauge(left) || !bareGauge(right)) return;
    const led = left.before.some(
      (index) =>
        items[index]?.kind !== itemKind.subject && !/^(?:now|at)$/.test(items[index]?.text ?? ""),
    );
    if (led || left.hint !== undefined || right.hint !== undefined) return;
    const fits =
      left.value >= lowSide[0] &&
      left.value <= lowSide[1] &&
      right.value >= highSide[0] &&
      right.value <= highSide[1] &&
      right.value > left.value * 1.3;
    if (!fits) return;
    asGauge(left, "suction");
    asGauge(right, "discharge");
  });
}

const switched =
  /^(?:contactor|contactors|fuse|fuses|breaker|relay|switch|disconnect|disco|coil|volts|voltage|amps|line|load|contacts)$/;

/** "gauges both at 170", "172 both sides": one figure for the two. */
export function bothSides(items: readonly Item[], drafts: readonly Draft[]): void {
  if (!items.some((item) => item.text === "both")) return;
  for (const draft of drafts) {
    const near = items.slice(Math.max(0, draft.index - 3), draft.index + 4);
    const both = near.findIndex((item) => item.text === "both");
    if (both < 0 || draft.unit !== undefined ? !psi(draft) || both < 0 : false) continue;
    const next = near[both + 1]?.text ?? "";
    const before = near[both - 1]?.text ?? "";
    if (
      !/^(?:sides|gauges|side|hoses|needles)$/.test(next) &&
      !/^(?:gauges|sides|pressures)$/.test(before)
    )
      continue;
    if (draft.place !== undefined || draft.points !== undefined || draft.rating !== undefined)
      continue;
    if (draft.value < 20 || draft.value > 700 || (draft.named ?? "pressure") !== "pressure")
      continue;
    if (!psi(draft) && items.some((item) => switched.test(item.text))) continue;
    draft.named = "pressure";
  }
}

function psi(draft: Draft): boolean {
  return draft.unit?.dimension === "pressure";
}

/** "98 psi suction line 76, 268 liquid line 89": the line's name between its pressure and its temperature. */
export function lineBetween(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || right.index !== left.index + 2) return;
    const label = items[left.index + 1]?.label;
    if (label?.place === undefined || label.hint !== "temperature" || !sides.has(label.place))
      return;
    const own = left.unit?.dimension === "pressure";
    if (!own && (left.unit !== undefined || left.value < 60)) return;
    if (right.unit !== undefined && right.unit.dimension !== "temperature") return;
    if (items[right.index + 1]?.label?.place !== undefined) return;
    if (left.before.some((index) => items[index]?.label?.place !== undefined)) return;
    if (left.value < right.value * 1.2) return;
    left.place = label.place;
    left.named = "pressure";
    left.hint = undefined;
    right.place = label.place;
    right.named = "temperature";
  });
}

/** "liquid 356, 91 at the condenser": behind the liquid's pressure a figure so small is its temperature. */
export function liquidThen(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || right.unit !== undefined || right.named !== undefined) return;
    if (right.hint !== undefined || right.points !== undefined || right.rating !== undefined)
      return;
    const pressure = left.unit?.dimension === "pressure" || (!left.ownUnit && left.value > 165);
    const follows = left.hint === "temperature" && left.place === "liquid" && order > 1;
    if (left.place !== "liquid" || !(pressure || follows)) return;
    if (right.place !== undefined && right.place !== "liquid") return;
    if (right.value < 50 || right.value > 140 || (pressure && right.value > left.value * 0.5))
      return;
    const [joint, after, last] = items.slice(right.index + 1, right.index + 4);
    const end = last !== undefined && after?.text === "the" ? last.text : (after?.text ?? "");
    const there = /^(?:at|leaving|into|entering|by|before|after)$/.test(joint?.text ?? "");
    if (!there || !/^(?:condenser|cond|valve|eev|txv|drier|receiver|coil|unit)$/.test(end)) return;
    right.place = "liquid";
    right.hint = "temperature";
    right.named = "temperature";
  });
}

/** "liquid 120 line 70": what stands before its line's temperature is the pressure. */
export function liquidLine(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left?.place !== "liquid" || left.unit !== undefined || left.named !== undefined) return;
    if (left.hint !== undefined || items[left.index + 1]?.text !== "line") return;
    if (right.index === left.index + 2 && left.value > right.value) left.named = "pressure";
  });
}
