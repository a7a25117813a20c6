import { type Item, wordsFrom } from "../item.ts";
import { minutesBehind } from "./minutes-behind.ts";

const isHours = (item: Item | undefined): boolean => item?.unit?.figure === "h";

/** "total on site 2.5 hrs", "2.5 hrs on site": how long somebody was there, no arrival. */
export function isStay(items: readonly Item[], from: number, after: number): boolean {
  // "2h 15 on site": the minutes of those hours
  const parted = isHours(items[from - 2]) && items[from - 1]?.unit === undefined;
  const before = items[parted ? from - 2 : from - 1];
  if (/^(?:total|time)$/.test(before?.text ?? "")) return true;
  return isHours(before) && !isHours(items[after]) && items[after]?.text !== "ago";
}

const told = /\btotal(?: time)?(?: on| site| onsite| here| labor| is| was|:)*$/;
/** "thats 2.5 hrs on this one so far", "3 hrs in on this job": counted up to now. */
const upToNow =
  /^(?:in )?(?:on|into) (?:this|it|the job|the call)(?: (?:one|job|call|unit|ticket))?(?: so far| already| now)?(?: [,.].*)?$|^so far\b/;
const counts = /^(?:$|.*\b(?:thats|makes|made|got|have|about|up to|at|is)$)/;
const runs = /\b(?:hold|held|holding|run|ran|running|runtime|pump|vac|vacuum|down)\b/;

/** "used 4 filters, total on site 2.5 hrs": hours that are called a total, among whatever else. */
export function isTotal(items: readonly Item[], at: number): boolean {
  const before = wordsFrom(items, at - 4, at);
  const behind = items[at + (minutesBehind(items, at) > 0 ? 2 : 1)]?.text ?? "";
  if (runs.test(before)) return false;
  const after = wordsFrom(items, at + 1, at + 7);
  if (counts.test(before) && upToNow.test(after)) return true;
  // "gonna change both, 1.5 hrs so far"
  const own = items[at - 1]?.text === "," && /^so far(?: [,.].*)?$/.test(after);
  const works = items.every(
    ({ text }) => !runs.test(text) && !/^(?:off|out|n2|nitro\w*)$/.test(text),
  );
  if (own && works) return true;
  return told.test(before) || behind === "total";
}
