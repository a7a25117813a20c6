import { type Item, itemKind, newItem } from "./item.ts";
import { role } from "./word.ts";

const led = /^(?:across|on|between|btwn|at|from|is|was)$/;

/** Does a figure stand behind the points, past a verb? */
function valueBehind(items: readonly Item[], at: number): boolean {
  const verb = ((items[at]?.roles ?? 0) & role.is) !== 0 || /^reads?$/.test(items[at]?.text ?? "");
  return items[verb ? at + 1 : at]?.kind === itemKind.number;
}

/**
 * "203 across L1 L2, L2 L3 is 0": the first pair is the figure's before it, and the list of pairs goes
 * on with the next one's. Cut at the comma.
 */
export function pairBehindValue(items: Item[], plain: string): void {
  for (let at = 2; at < items.length; at++) {
    const [value, word, row] = items.slice(at - 2, at + 1);
    const { points } = row ?? {};
    if (row?.kind !== itemKind.points || points === undefined || points.length < 2) continue;
    if (value?.kind !== itemKind.number || !led.test(word?.text ?? "")) continue;
    if (!points.every((one) => one.length === 2) || !valueBehind(items, at + 1)) continue;
    const comma = plain.indexOf(",", row.from);
    if (comma < 0 || comma >= row.to) continue;
    const first = newItem(itemKind.points, row.from, comma, row.text);
    first.points = points.slice(0, 1);
    const begins = comma + (plain.charAt(comma + 1) === " " ? 2 : 1);
    const rest = newItem(itemKind.points, begins, row.to, row.text);
    rest.points = points.slice(1);
    items.splice(at, 1, first, newItem(itemKind.sign, comma, comma + 1, ","), rest);
  }
}
