import { type Item, itemKind } from "../item.ts";
import { freeNumber } from "./near.ts";
import { SIZE } from "./size-words.ts";

/** Volts that machines and their controls are made for; common practice, no source. */
const supplyVolts: ReadonlySet<number> = new Set([
  24, 115, 120, 208, 220, 230, 240, 277, 380, 400, 415, 440, 460, 480, 575, 600,
]);

/** "xfmr tap is on 240", "206 coming in on the 240 tap": how it is wired. */
export function tapped(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.unit !== undefined && item.unit.figure !== "V") return false;
  if (!supplyVolts.has(item?.value ?? 0)) return false;
  if (/^taps?$/.test(items[i + 1]?.text ?? "")) return true;
  const led = items.slice(Math.max(0, i - 4), i).map(({ text }) => text);
  return led.some((text) => /^(?:tap|taps|tapped)$/.test(text)) && led.length > 0;
}

/** "1/2 hp motor 115v": what it is made for, behind its size. */
export function ratedMotor(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.unit?.figure !== "V" || !supplyVolts.has(item.value)) return false;
  return items
    .slice(Math.max(0, i - 2), i)
    .some(({ owner, unit }) => owner === SIZE && unit?.figure === "hp");
}

/** "24v side only 21.6": which side is meant; the word then stands for it. */
export function sideOf(items: readonly Item[], i: number): boolean {
  const [item, side] = [items[i], items[i + 1]];
  if (item?.unit?.figure !== "V" || side?.text !== "side" || !supplyVolts.has(item.value))
    return false;
  if (!items.slice(i + 2).some((one) => freeNumber(one))) return false;
  side.kind = itemKind.label;
  side.label = item.value === 24 ? { place: "control", hint: "voltage" } : { hint: "voltage" };
  return true;
}

const orders =
  /^(?:need|needs|needing|order|ordering|ordered|get|getting|bring|grab|send|quote|pick up|pickup|request|requesting|buy)$/;

/** "please order a fan motor and a 7.5 microfarad capacitor for it": the size of what is to be bought. */
export function orderedSize(items: readonly Item[], i: number): boolean {
  if (items[i]?.unit?.dimension !== "capacitance") return false;
  if (!/^(?:cap|caps|capacitor|capacitors)$/.test(items[i + 1]?.text ?? "")) return false;
  const article = /^(?:an?|one|two|new|another|the|1|2)$/.test(items[i - 1]?.text ?? "");
  return article && items.slice(0, i).some(({ text }) => orders.test(text));
}
