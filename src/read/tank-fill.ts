import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const tanks = /^(?:tanks?|cylinders?|cyl|bottles?|drum|jug)$/;

/** Least water capacity of a recovery cylinder, lb or kg; common practice, no source. */
const leastCapacity = 8;

const near = (items: readonly Item[], i: number): boolean =>
  items.slice(Math.max(0, i - 4), i + 4).some(({ text }) => tanks.test(text));

/** "47.7 WC tank", "cylinder WC 47.7 lb": beside a cylinder WC is the water that it holds, which is its size. */
export function isWaterCapacity(items: readonly Item[], i: number, plain: string): boolean {
  const item = items[i];
  if (item === undefined || item.value < leastCapacity || !near(items, i)) return false;
  if (item.unit?.figure === "in wc") return /w\.?c\.?$/i.test(textOf(item, plain));
  const named = items[i - 1]?.text ?? "";
  return /^(?:wc|w\.c|water capacity)$/.test(named) && isWeight(item);
}

const textOf = ({ from, to }: Item, plain: string): string => plain.slice(from, to);

/** Words that may name the gas between a weight and where it is. */
const gasWords = 6;

function isWeight({ unit }: Item): boolean {
  return unit === undefined || unit.dimension === "mass";
}

/** "47.7 WC tank, 31 lb in it": what is in the tank came out of a machine. */
export function inTank(list: readonly Draft[], items: readonly Item[], plain: string): void {
  const tank = items.findIndex(({ text }) => tanks.test(text));
  const ahead = items.slice(Math.max(0, tank - 3), Math.max(0, tank));
  if (tank < 0 || ahead.some(({ text }) => /^(?:from|of|off|out)$/.test(text))) return;
  for (const draft of list) {
    if (draft.action !== "charged" || draft.index < tank) continue;
    const behind = items.slice(draft.index + 1, draft.index + gasWords);
    const said = behind.find(({ kind }) => kind === itemKind.label);
    const words = said === undefined ? "" : textOf(said, plain);
    if (/^in (?:it|there)\b/i.test(words)) draft.action = "recovered";
  }
}
