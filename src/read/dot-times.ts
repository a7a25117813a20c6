import type { Context } from "./context.ts";
import { type Item, itemKind, newItem } from "./item.ts";
import { isNitrogen } from "./nitrogen-name.ts";

const came =
  /\b(?:arrived|arr|on ?site|got (?:here|in)|here|offsite|off site|left site|leaving)(?: (?:at|@))?:? ?$/;
const went = /\b(?:left|back|done|finished|started)(?: (?:at|@))?:? ?$/;

const clock = /^(?:[01]?\d|2[0-3])\.[0-5]\d$/;

/** "arrived lark tower 8.10": a name, which is no word of the trade, between the coming and its hour. */
const cameTo =
  /(?:^|[.,;\n] ?)(?:arrived|arr|on ?site|got to|reached|leaving|left)(?: at)?(?: [a-z'-]+){1,3} $/;

function atPlace(items: readonly Item[], i: number, plain: string): boolean {
  const [item, before] = [items[i], items[i - 1]];
  const { place, quantity, hint } = before?.label ?? {};
  const told = [place, quantity, hint].some((one) => one !== undefined);
  if (before === undefined || told || before.roles !== 0 || !ends(items[i + 1])) return false;
  return cameTo.test(plain.slice(0, item?.from));
}

/** "left 2.10 in the bottle": what is told on is no hour. */
function ends(next: Item | undefined): boolean {
  return next === undefined || next.kind === itemKind.sign || next.kind === itemKind.line;
}

/** Hours in which people work, by their own clock. Our choice, no source. */
const byDay = /^(?:0?[5-9]|1\d|2[0-2])\.[0-5]\d$/;

/** "closed 12.50 0,4", "n2 25 bar 10.15, 11.15 24,9": who writes tenths with a comma has the point for his hours. */
function besideCommas(items: readonly Item[], i: number, plain: string): boolean {
  const item = items[i];
  if (item === undefined || !byDay.test(item.text) || !/\d,\d/.test(plain)) return false;
  const [before, next] = [items[i - 1], items[i + 1]];
  const named = before?.label ?? before?.subject ?? before?.points;
  return named === undefined && (next?.kind === itemKind.number || ends(next) || isSame(next));
}

const isSame = (item: Item | undefined): boolean =>
  item?.kind === itemKind.same || /^(?:same|still|no|nothing|ok)$/.test(item?.text ?? "");

/** "n2 20 bar 11.15", "11.45 same, no drop": a clock beside what holds a gas or a vacuum in a metric house. */
function watched(items: readonly Item[], i: number, watch: boolean): boolean {
  const item = items[i];
  if (item === undefined || !byDay.test(item.text)) return false;
  const [before, next] = [items[i - 1], items[i + 1]];
  // "11.45 same": at the head of it
  if (watch && i === 0) return isSame(next) || next?.kind === itemKind.number;
  const own = before?.unit?.dimension;
  const held = own === "pressure" || own === "low_pressure";
  return held && (watch || items.some(isNitrogen)) && ends(next);
}

/**
 * "arrived 8.20 LP 7.8", "on site 14.05, suction 5.1": behind a coming or a going an hour with a point is
 * a time, as it is written where units are metric. The comma that parts it from what follows comes with it.
 */
export function dotTimes(items: Item[], plain: string, context: Context): void {
  const metric = context.units === "si";
  const last = context.readings[context.readings.length - 1];
  const held = last?.quantity === "pressure" && last.at === undefined;
  const watch = held || last?.quantity === "vacuum" || context.testing === "vacuum";

  for (let i = 0; i < items.length; i++) {
    const item = items[i];
    if (item?.kind !== itemKind.number || item.unit !== undefined || item.owner !== undefined)
      continue;
    if (!clock.test(item.text)) continue;
    const before = plain.slice(Math.max(0, item.from - 14), item.from);
    const next = items[i + 1];
    const clocked = metric && (besideCommas(items, i, plain) || watched(items, i, watch));
    const coming = came.test(before) || (went.test(before) && ends(next));
    if (!coming && !clocked && !atPlace(items, i, plain)) continue;
    item.value = Math.round(item.value * 100);
    item.colon = true;
    if (!ends(next)) items.splice(i + 1, 0, newItem(itemKind.sign, item.to, item.to, ","));
  }
}
