import { type Item, itemKind } from "../item.ts";
import { textAt } from "./near.ts";

/** Minutes since midnight of "at seven twenty" behind a value, as the clock's face has them. */
function faceAt(items: readonly Item[], i: number): number | undefined {
  const item = items[i];
  if (item?.kind !== itemKind.number || textAt(items, i - 1) !== "at") return undefined;
  if (item.unit !== undefined || !(item.spoken || item.colon)) return undefined;
  const { value } = item;
  if (!Number.isInteger(value) || value < 100 || value >= 1300 || value % 100 >= 60)
    return undefined;
  let before = i - 2;
  while (/^(?:now|nitrogen|there|still)$/.test(textAt(items, before))) before--;
  // "and at ten fifteen it's thirty six"
  const its = /^(?:its|it's)$/.test(textAt(items, i + 1));
  const was = textAt(items, i + 1) === "it" && textAt(items, i + 2) === "was";
  const ahead = (its || was) && items[i + (its ? 2 : 3)]?.kind === itemKind.number;
  return items[before]?.kind === itemKind.number || ahead
    ? Math.floor(value / 100) * 60 + (value % 100)
    : undefined;
}

/** "300 psi at six ten … 292 at nine forty": two values, each at its time, the second one later. */
export function twoTimes(items: readonly Item[], i: number): boolean {
  const here = faceAt(items, i);
  if (here === undefined) return false;
  return items.some((_, at) => {
    const other = at === i ? undefined : faceAt(items, at);
    return other !== undefined && (at > i ? other > here : other < here);
  });
}
