import { type Item, itemKind } from "../item.ts";
import { textAt } from "./near.ts";

/** "28 bar at 0815, 28 bar 1230": behind a figure with its unit four digits are a time, as the first were. */
export function nextTime(items: readonly Item[], i: number, clock: string): boolean {
  const [item, value] = [items[i], items[i - 1]];
  if (item?.kind !== itemKind.number || item.spoken || item.unit !== undefined) return false;
  if (item.to - item.from !== 4 || item.value % 100 >= 60 || item.value >= 2400) return false;
  const measured = value?.kind === itemKind.number && value.unit !== undefined;
  if (!measured && !opensPart(items, i)) return false;
  return items.slice(0, i).some(({ owner, kind }) => owner === clock && kind === itemKind.number);
}

/** "0915 300, 1015 298": at the head of a part, and a value behind it. */
function opensPart(items: readonly Item[], i: number): boolean {
  if (!/^(?:[,.;]|and|then|n|&|\n|)$/.test(textAt(items, i - 1))) return false;
  let next = i + 1;
  while (/^(?:still|now|down|up|at|to|:|-|its|it's|was|only|about)$/.test(textAt(items, next)))
    next++;
  return items[next]?.kind === itemKind.number;
}
