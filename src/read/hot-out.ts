import type { UnitHabit } from "../model.ts";
import { type Item, itemKind } from "./item.ts";

/** Air outside that one works in, F and Cel; common practice, no source. */
export const weather: Readonly<Record<UnitHabit, readonly [number, number]>> = {
  us: [-20, 125],
  si: [-30, 52],
};

const felt = /^(?:hot|cold|warm|cool|chilly|freezing|nice|humid|muggy|toasty|brutal)$/;
const about = /^(?:like|about|around|maybe|probably|almost|nearly|at|,|its|it's)$/;

/** "it's pretty hot out like 98", "cold out maybe 35": how warm the day is, no gauge of what is told beside it. */
export function hotOut(items: readonly Item[], units: UnitHabit): void {
  items.forEach((item, i) => {
    if (!/^(?:out|outside|outdoors)$/.test(item.text) || !felt.test(items[i - 1]?.text ?? ""))
      return;
    let at = i + 1;
    while (about.test(items[at]?.text ?? "")) at++;
    const value = items[at];
    const [low, high] = weather[units];
    if (value?.kind !== itemKind.number || value.value < low || value.value > high) return;
    if (value.unit !== undefined && value.unit.dimension !== "temperature") return;
    item.kind = itemKind.label;
    item.label = { place: "outdoor_air", hint: "temperature", quantity: "temperature" };
    item.signs = undefined;
  });
}

const rests = (items: readonly Item[]): boolean =>
  items.some(({ text }) => /^(?:off|down|idle|rest|sat|sitting|gauges?|standing)$/.test(text));

/** "off 4 hrs, everything at 80, gauges 285": machine and air stand at one warmth, which is no gauge. */
export function everythingAt(items: readonly Item[], units: UnitHabit): void {
  items.forEach((item, i) => {
    if (item.text !== "everything" || items[i + 1]?.text !== "at" || !rests(items)) return;
    const value = items[i + 2];
    const [low, high] = weather[units];
    if (value?.kind !== itemKind.number || value.value < low || value.value > high) return;
    if (value.unit !== undefined || /^[/-]$/.test(items[i + 3]?.text ?? "")) return;
    item.kind = itemKind.label;
    item.label = { hint: "temperature", quantity: "temperature" };
  });
}
