import { type Item, itemKind } from "./item.ts";

/** psi of a low side that runs at least, and how far a head is above it; common practice, no source. */
const least = 40;
const above = 1.4;

function isOver(low: Item | undefined, joint: Item | undefined, high: Item | undefined): boolean {
  if (low?.kind !== itemKind.number || high?.kind !== itemKind.number) return false;
  if (low.unit !== undefined || high.unit !== undefined) return false;
  if (!/^(?:\/|over)$/.test(joint?.text ?? "")) return false;
  return low.value >= least && high.value > low.value * above;
}

/** "118/342", "104 over 290": a bare figure that is one of two as both gauges show them. */
export function isGauges(items: readonly Item[], index: number): boolean {
  const [first, second, own, fourth, last] = items.slice(Math.max(0, index - 2), index + 3);
  if (index < 2) return isOver(items[index], items[index + 1], items[index + 2]);
  return isOver(own, fourth, last) || isOver(first, second, own);
}

/** "118/331 and 58 supply": the unit's air is told with it. */
export function airBehind(items: readonly Item[], at: number): boolean {
  const [joint, ...next] = items.slice(at + 3, at + 6);
  if (!/^(?:and|,|&|w|with)$/.test(joint?.text ?? "")) return false;
  return (
    next.some(({ kind }) => kind === itemKind.number) &&
    next.some(({ label }) => /^(?:supply|return)_air$/.test(label?.place ?? ""))
  );
}
