import { classOf } from "./carrier.ts";
import type { Item } from "./item.ts";

/**
 * "1.2G 1 min 2.9G 10 min", "600 -> 220 1 min -> 60 3 min": do the times stand behind their values
 * rather than before? They do where none stands before the first value and one behind the last, and
 * every value but the first has one; the first may be where it all began.
 */
export function namesTimesBehind(items: readonly Item[], values: readonly number[]): boolean {
  if (values.length < 2) return false;
  const [first, last] = [values[0] ?? 0, values[values.length - 1] ?? 0];
  if (items.slice(0, first).some((item) => classOf(item) === "T")) return false;
  const has = (from: number, to: number): boolean =>
    items.slice(from + 1, to).filter((item) => classOf(item) === "T").length === 1;
  const begun = values.length > 2 && !has(first, values[1] ?? 0);
  return values.every(
    (index, order) =>
      (order === 0 && begun) ||
      has(index, index === last ? items.length : (values[order + 1] ?? items.length)),
  );
}
