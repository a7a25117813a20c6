import { type Item, wordsFrom } from "../item.ts";

const isHours = (item: Item | undefined): boolean => item?.unit?.figure === "h";

/** "total on site 2.5 hrs", "2.5 hrs on site": how long somebody was there, no arrival. */
export function isStay(items: readonly Item[], from: number, after: number): boolean {
  const before = items[from - 1];
  if (/^(?:total|time)$/.test(before?.text ?? "")) return true;
  return isHours(before) && !isHours(items[after]) && items[after]?.text !== "ago";
}

const told = /\btotal(?: time)?(?: on| site| onsite| here| labor| is| was|:)*$/;
const runs = /\b(?:hold|held|holding|run|ran|running|runtime|pump|vac|vacuum|down)\b/;

/** "used 4 filters, total on site 2.5 hrs": hours that are called a total, among whatever else. */
export function isTotal(items: readonly Item[], at: number): boolean {
  const before = wordsFrom(items, at - 4, at);
  const behind = items[at + 1]?.text ?? "";
  if (runs.test(before)) return false;
  return told.test(before) || behind === "total";
}
