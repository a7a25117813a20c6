import type { Reading } from "../model.ts";
import { figures } from "./figures.ts";

/** Asked at a second, larger weight, once. */
export function moreOrTotal(before: Reading, now: Reading): string {
  const { action: _action, ...last } = now;
  return `${figures([last])} more after ${figures([before])}, or in total?`;
}

/** Asked at the same weight again, which counts once until its author says otherwise. */
export function sameOrMore(before: Reading): string {
  const { action: _action, ...weight } = before;
  return `${figures([weight])} again: sent twice, or more? Counted once.`;
}
