import { type Item, itemKind, newItem } from "./item.ts";
import { role } from "./word.ts";

/** "no amps on L2, L3 16.8": what is missing is missing on the first; the last point leads its own figure. */
export function rowDenied(items: Item[], plain: string): void {
  for (let i = 2; i + 1 < items.length; i++) {
    const [item, on, next] = [items[i], items[i - 1], items[i + 1]];
    const joint = /^(?:[-=:]|is)$/.test(next?.text ?? "") ? items[i + 2] : next;
    if (item?.kind !== itemKind.points || joint?.kind !== itemKind.number) continue;
    if (!/^(?:on|at)$/.test(on?.text ?? "") || !isNone(items, i - 2)) continue;
    if (item.points === undefined || item.points.length !== 2) continue;
    const [first, last] = item.points;
    const said = plain.slice(item.from, item.to);
    const gap = /[\s,]+(?=\S+(?: \d)?$)/.exec(said);
    if (gap === null || first === undefined || last === undefined) continue;
    const from = item.from + gap.index + gap[0].length;
    const own = newItem(itemKind.points, from, item.to, plain.slice(from, item.to));
    own.points = [last];
    item.points = [first];
    item.to = item.from + gap.index;
    const comma = newItem(itemKind.sign, item.to, item.to, ",");
    items.splice(i + 1, 0, comma, own);
  }
}

/** "no amps", "nothing": does it end here? */
function isNone(items: readonly Item[], i: number): boolean {
  const [before, item] = [items[i - 1], items[i]];
  if (/^(?:nothing|none|zero)$/.test(item?.text ?? "")) return true;
  return item?.kind === itemKind.unit && ((before?.roles ?? 0) & (role.not | role.zero)) !== 0;
}
