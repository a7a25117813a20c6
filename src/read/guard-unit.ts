import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { notMeasured } from "./not-measured.ts";

/** Inches of water at most where nothing speaks of a duct or a gas train; common practice, no source. */
const mostInches = 3;

/** "212 @ 6\"", "6 in from the comp": how far away, no pressure of air. */
export function farInches(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "static_pressure" || draft.named !== undefined) return;
  if (draft.unit?.dimension !== "inches_of_water" && draft.unit?.dimension !== "length") return;
  const unit = items[draft.index];
  const from = /^(?:from|away)$/.test(items[draft.index + 1]?.text ?? "");
  if (draft.value <= mostInches || (!from && (unit?.to ?? 0) - (unit?.unitFrom ?? 0) > 2)) return;
  if (
    items.some(({ text }) => /^(?:gas|manifold|inlet|static|duct|water|wc|burner|esp)/.test(text))
  )
    return;
  draft.question = "quantity";
}

/** Degrees at most between the ends of a part; common practice, no source. */
const widestDrop = 50;

/** "pd across the drier 9 deg": what lies between its ends. */
export function degreesAcross(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "temperature" || draft.place !== undefined || !draft.ownUnit) return;
  if (draft.value < 0 || draft.value > widestDrop || draft.named !== undefined) return;
  const led = items.slice(Math.max(0, draft.index - 4), draft.index);
  if (led.some(({ text }) => text === "across")) draft.quantity = "temperature_difference";
}

/** "two hundred K": nobody reads kelvins; thousands of ohms or of anything. */
export function kelvins(draft: Draft): void {
  if (draft.quantity !== "temperature" || draft.unit?.figure !== "K") return;
  if (draft.value >= 60 && draft.place === undefined) draft.question = "quantity";
}

const wholeFigures: ReadonlySet<string> = new Set([
  "current",
  "voltage",
  "pressure",
  "winding_resistance",
  "insulation_resistance",
]);

/** "pipe 3/8": a size, no degrees; "oil lvl 1/2 glass": how full, no amps of a list. */
export function partDegree(draft: Draft, items: readonly Item[]): void {
  const item = items[draft.index];
  if (item?.fraction !== true || item.unit !== undefined || draft.quantity === undefined) return;
  if (draft.quantity === "temperature" && draft.value < 3 && !draft.ownUnit)
    draft.question = "quantity";
  if (!wholeFigures.has(draft.quantity) || draft.value >= 1 || draft.named !== undefined) return;
  if (draft.thing === "level") notMeasured(draft);
  else draft.question = "quantity";
}

/** "suction line 40 ft from the comp": how far away, no length of the line. */
export function farFeet(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "length") return;
  // "65 feet of three eighths and three quarter": the size of the second pipe
  if (items[draft.index]?.fraction === true && draft.value < 3) notMeasured(draft);
  if (draft.named !== undefined) return;
  const next = items[draft.index + 1]?.text ?? "";
  if (/^(?:from|away|up|above|below|off|back|out|past|down)$/.test(next)) notMeasured(draft);
}

const others =
  /^(?:fpm|grains?|decibels?|dba|db a|mph|lux|tds|kwh|btus?|btuh|mbh|cycles|clicks|ph|gallons?|percentile)$/;

const noise = /^(?:noisy|noise|loud|louder|sound|quiet|phone|meter|decibels?|dba)$/;

/** "noisy, 71 db on my phone": how loud it is, no dry bulb. */
function loudness(draft: Draft, items: readonly Item[]): boolean {
  const beside = [items[draft.index + 1]?.text, items[draft.index - 1]?.text];
  if (!beside.includes("db") || draft.ownUnit) return false;
  return items.some(({ text }) => noise.test(text));
}

/** "400 fpm", "400 feet per minute", "10400 kilowatt hours": units of what we have no quantity for. */
export function otherUnits(draft: Draft, items: readonly Item[]): void {
  const [next, after, last] = items.slice(draft.index + 1, draft.index + 4).map(({ text }) => text);
  const length = draft.unit?.dimension === "length";
  const speed = length && /^(?:per|a)$/.test(next ?? "") && /^(?:min|sec)/.test(after ?? "");
  const work = draft.unit?.dimension === "power" && /^(?:hours?|hrs?)$/.test(next ?? "");
  const bare = !draft.ownUnit && others.test(next ?? "") && last !== "=";
  if (speed || work || bare || loudness(draft, items)) notMeasured(draft);
}

/** "eat 80/67": dry and wet, or two thermometers: the second is asked about. */
export function bulbPairs(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || right.index !== left.index + 2 || right.gone) return;
    if (items[left.index + 1]?.text !== "/" || right.ownUnit || left.ownUnit) return;
    if (left.quantity !== "temperature" || right.quantity !== "temperature") return;
    if (left.place === undefined || !/^(?:return|supply|outdoor|indoor)_air$/.test(left.place))
      return;
    if (left.place === right.place && right.value < left.value) right.question = "quantity";
  });
}

/** "48 psi at 41": behind the pressure and "at" no second pressure stands. */
export function atWarmth(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "pressure" || draft.ownUnit) return;
  const left = items[draft.index - 2];
  if (items[draft.index - 1]?.text !== "at" || left?.unit?.dimension !== "pressure") return;
  draft.question = "quantity";
}
