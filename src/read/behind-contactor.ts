import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** V between two legs that are whole; a winding pair behind a contactor has a few ohms. Common practice, no source. */
const leastWhole = 90;

function isMotorPair({ points, unit, named, over, rating }: Draft): boolean {
  if (unit !== undefined || named !== undefined || over || rating !== undefined) return false;
  const [pair, ...more] = points ?? [];
  return more.length === 0 && pair?.length === 2 && pair.every((point) => /^T\d$/.test(point));
}

/** "at the contactor bottom T1-T2 470, T2-T3 40": pairs of its load side, one of them with the volts of a line. */
export function behindContactor(list: readonly Draft[], items: readonly Item[]): void {
  if (!items.some(({ text }) => text === "contactor")) return;
  const row = list.filter(isMotorPair);
  if (row.length < 2 || !row.some(({ value }) => value >= leastWhole)) return;
  for (const draft of row) {
    draft.named = "voltage";
    draft.quantity = "voltage";
    draft.unit = unitCalled("V");
    draft.assumedUnit = true;
  }
}
