import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const gear =
  /^(?:sw|switch|relay|contactor|fuse|fuses|transformer|xfmr|breaker|brkr|disconnect|disco|hps|lps|limit|interlock|float)$/;
/** V that goes through such gear; common practice, no source. */
const supplies: readonly number[] = [24, 115, 208, 230, 277, 400, 460, 575];
/** Share by which a supply is off from what it is called; common practice, no source. */
const off = 0.12;

function isSupply(value: number): boolean {
  return supplies.some((volts) => Math.abs(value - volts) <= volts * off);
}

function isBare({ unit, named, points, action, over }: Draft): boolean {
  if (over || points !== undefined || action !== undefined) return false;
  return unit === undefined ? named === undefined : unit.dimension === "voltage";
}

/** "door switch was bad, 120 in 0 out": what goes into a contact comes out whole or not at all, and is volts. */
export function throughSwitch(drafts: readonly Draft[], items: readonly Item[]): void {
  if (!items.some(({ text }) => gear.test(text))) return;
  drafts.forEach((left, order) => {
    const right = drafts[order + 1];
    if (right === undefined || !isBare(left) || !isBare(right)) return;
    if (right.index - left.index > 4) return;
    if (items[left.index + 1]?.text !== "in" || items[right.index + 1]?.text !== "out") return;
    const whole = Math.abs(right.value - left.value) <= left.value * off;
    if (!isSupply(left.value) || !(right.value === 0 || whole)) return;
    right.kind ??= left.kind ?? left.unit?.kind;
    for (const draft of [left, right]) {
      draft.named = "voltage";
      draft.unit ??= unitCalled("V");
      draft.assumedUnit = true;
      draft.hint = undefined;
      draft.place = undefined;
      draft.rating = undefined;
    }
  });
}
