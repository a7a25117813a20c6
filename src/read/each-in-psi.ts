import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** A high side is so many times its low side, while a compressor runs; common practice, no source. */
const apart = { least: 1.4, most: 12 } as const;

/** "63 psi/238 psi": both gauges, each with its unit. */
export function eachInPsi(items: readonly Item[], left: Draft, right: Draft): boolean {
  const stroke = items[left.index + 1];
  if (stroke?.text !== "/" || items[right.index + 1]?.text === "/") return false;
  if (!left.ownUnit || !right.ownUnit || left.unit?.dimension !== "pressure") return false;
  if (right.unit?.figure !== left.unit.figure || left.action !== undefined) return false;
  if (left.value <= 0) return false;
  return right.value > left.value * apart.least && right.value < left.value * apart.most;
}
