import type { Reading } from "../model.ts";
import { figures } from "./figures.ts";

/** Asked at a second, larger weight, once. */
export function moreOrTotal(before: Reading, now: Reading): string {
  const { action: _action, ...last } = now;
  return `${figures([last])} more after ${figures([before])}, or in total?`;
}
