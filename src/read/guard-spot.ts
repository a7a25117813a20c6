import type { UnitHabit } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { lineVolts } from "./line-volts.ts";
import { recast } from "./recast.ts";

/** Two pressures at one spot of one moment lie closer than this; farther apart one is something else. */
const APART = 1.6;

const joint = /^(?:,|\/|and|&)$/;

/** Nothing but a joint stands between the two numbers. */
function adjoins(items: readonly Item[], left: Draft, right: Draft): boolean {
  const gap = items.slice(left.index + 1, right.index);
  return gap.length === 0 || (gap.length === 1 && joint.test(gap[0]?.text ?? ""));
}

function plain(draft: Draft): boolean {
  const { gone, quantity, rating, earlier, after, series, question } = draft;
  const free = [rating, after, series, question].every((one) => one === undefined);
  return !gone && free && !earlier && quantity === "pressure" && Number.isNaN(draft.high);
}

/** "suction 119 51", "suct 118,402": the second is the line's warmth or the other side, and is asked about. */
export function spotTwice(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || !plain(left) || !plain(right) || right.ownUnit) return;
    if (left.place === undefined || left.place !== right.place || !adjoins(items, left, right))
      return;
    if (left.subject !== right.subject || list[order + 1]?.quantity === "pressure") return;
    const [low, high] = [left.value, right.value].sort((a, b) => a - b);
    if (low === undefined || high === undefined || low <= 0 || high / low < APART) return;
    right.place = undefined;
    right.question = "quantity";
  });
}

/** "lead to ground 310 305 300": a lead is tested to ground, in which unit is not told. */
export function leadsToGround(list: readonly Draft[], items: readonly Item[]): void {
  const at = items.findIndex(({ text }) => /^leads?$/.test(text));
  if (at < 0 || items.some(({ label }) => label?.quantity === "voltage")) return;
  for (const draft of list) {
    if (draft.gone || draft.quantity !== "voltage" || draft.ownUnit || draft.index < at) continue;
    const named = draft.points !== undefined || draft.place !== undefined;
    const ground = items.slice(at, draft.index).some(({ kind }) => kind === itemKind.ground);
    if (ground && !named) draft.question = "quantity";
  }
}

/** No pipe that is held under nitrogen is as warm, F; our choice, no source. */
const WARMEST = 130;
/** Inches of water that no duct stands and no meter for ducts shows; common practice, no source. */
const DUCT = 20;

/** "still 300 90F": the degrees are the second's, the first goes on with the pressure that was read. */
export function pressureThenDegrees(
  list: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  list.forEach((left, order) => {
    const right = list[order + 1];
    if (right === undefined || left.gone || right.gone || left.ownUnit || !right.ownUnit) return;
    if (left.quantity !== "temperature" || right.quantity !== "temperature") return;
    if (right.unit?.figure !== "F" || left.value < WARMEST || left.place !== undefined) return;
    if (left.value < APART * right.value || !adjoins(items, left, right)) return;
    const last = readings.findLast(({ quantity }) => quantity === "pressure");
    const near = Number(last?.figure.number) / left.value;
    if (last !== undefined && near > 0.7 && near < 1.4) recast(left, "pressure", last.figure.unit);
    else left.question = "quantity";
  });
}

/** "c2 static 140": what the circuit stands at, no duct. */
export function standing(list: readonly Draft[]): void {
  for (const draft of list)
    if (draft.quantity === "static_pressure" && draft.unit?.figure === "in wc" && !draft.ownUnit)
      if (draft.value >= DUCT) recast(draft, "pressure", "psi");
}

const boxes = /^(?:cold|cool|chill|coldroom|coolroom)$/;
const leadsOn = /^(?::|at|is|box)$/;

/** "cold room 2: box 6.5", "coldroom 3 at 40": which of the rooms, then how warm it is. */
export function numberedBox(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((left, order) => {
    const right = list[order + 1];
    if (right === undefined || left.gone || right.gone || left.ownUnit) return;
    if (left.place !== "box" || right.place !== "box" || left.quantity !== right.quantity) return;
    if (!Number.isInteger(left.value) || left.value < 1 || left.value > 12) return;
    if (!boxes.test(items[left.index - 1]?.text ?? "")) return;
    const gap = items.slice(left.index + 1, right.index);
    if (gap.length === 0 || !gap.every(({ text }) => leadsOn.test(text))) return;
    left.gone = true;
    right.subject ??= `cold room ${left.value}`;
    right.before = [...left.before, left.index, ...right.before];
  });
}

/** "sensor 8.2k, chart says 9.9k at 40. line is 41": a pipe's degrees, no volts of a supply. */
export function coldLine(list: readonly Draft[], items: readonly Item[], units: UnitHabit): void {
  for (const draft of list) {
    if (draft.quantity !== "voltage" || draft.ownUnit || draft.value >= lineVolts.least) continue;
    const is = /^(?:is|at|was|now)$/.test(items[draft.index - 1]?.text ?? "");
    const line = items[is ? draft.index - 2 : draft.index - 1];
    if (line?.text !== "line" || line.to - line.from > "line".length) continue;
    recast(draft, "temperature", units === "us" ? "F" : "C");
    draft.assumedUnit = true;
  }
}
