import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** How far the same lead at the pins may be from what it was through the cable; our choice, no source. */
const nearTimes = 5;

const isBare = ({ unit, named, hint, points, place, over, rating }: Draft): boolean =>
  !over && [unit, named, hint, points, place, rating].every((one) => one === undefined);

/** "straight at the pins 0.6 0.6 0.6" behind the leads to ground: the same test without the cable. */
export function groundAtPins(
  list: readonly Draft[],
  items: readonly Item[],
  { readings, latest }: Context,
): void {
  if (!items.some(({ text }) => /^(?:pins|terminals|studs)$/.test(text))) return;
  const last = readings.slice(-latest);
  const leads = last.length === list.length && list.length > 1;
  if (!leads || !last.every(({ quantity }) => quantity === "insulation_resistance")) return;
  const alike = list.every((draft, order) => {
    const was = Number(last[order]?.figure.number);
    return isBare(draft) && draft.value * nearTimes >= was && draft.value <= was * nearTimes;
  });
  if (!alike) return;
  for (const [order, draft] of list.entries()) {
    const was = last[order];
    if (was?.points === undefined) continue;
    draft.named = "insulation_resistance";
    draft.unit = unitCalled(was.figure.unit);
    draft.assumedUnit = true;
    draft.points = [was.points];
    draft.assumedPoints = true;
    draft.testVoltage ??= was.test_voltage;
  }
}
