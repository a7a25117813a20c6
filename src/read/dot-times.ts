import { type Item, itemKind, newItem } from "./item.ts";

const came =
  /\b(?:arrived|arr|on ?site|got (?:here|in)|here|offsite|off site|left site|leaving)(?: (?:at|@))?:? ?$/;
const went = /\b(?:left|back|done|finished|started)(?: (?:at|@))?:? ?$/;

const clock = /^(?:[01]?\d|2[0-3])\.[0-5]\d$/;

/** "left 2.10 in the bottle": what is told on is no hour. */
function ends(next: Item | undefined): boolean {
  return next === undefined || next.kind === itemKind.sign || next.kind === itemKind.line;
}

/**
 * "arrived 8.20 LP 7.8", "on site 14.05, suction 5.1": behind a coming or a going an hour with a point is
 * a time, as it is written where units are metric. The comma that parts it from what follows comes with it.
 */
export function dotTimes(items: Item[], plain: string): void {
  for (let i = 0; i < items.length; i++) {
    const item = items[i];
    if (item?.kind !== itemKind.number || item.unit !== undefined || item.owner !== undefined)
      continue;
    if (!clock.test(item.text)) continue;
    const before = plain.slice(Math.max(0, item.from - 14), item.from);
    const next = items[i + 1];
    if (!came.test(before) && !(went.test(before) && ends(next))) continue;
    item.value = Math.round(item.value * 100);
    item.colon = true;
    if (!ends(next)) items.splice(i + 1, 0, newItem(itemKind.sign, item.to, item.to, ","));
  }
}
