import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** Air on both sides of a coil, F and Cel, and what lies between at most. Common practice, no source. */
const airs: Readonly<Record<UnitHabit, { least: number; most: number; between: number }>> = {
  us: { least: 40, most: 140, between: 70 },
  si: { least: 4, most: 60, between: 40 },
};

const wet = /^(?:water|waters|chw|hw|loop|glycol|brine|chiller|condenser|cond|evaporator)$/;

/** "split 76 57", "delta t 76/57": the two airs that it lies between, no two splits. */
export function splitOfAirs(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  const { least, most, between } = airs[units];
  if (items.some(({ text }) => wet.test(text))) return;
  drafts.forEach((right, order) => {
    const [left, next] = [drafts[order - 1], drafts[order + 1]];
    if (left?.named !== "temperature_difference" || left.gone || right.gone) return;
    if ([left, right].some((one) => one.unit ?? one.points ?? one.place ?? one.rating)) return;
    if (right.named !== undefined && right.named !== "temperature_difference") return;
    const joint = items.slice(left.index + 1, right.index).map(({ text }) => text);
    if (joint.length > 1 || !/^(?:|\/|and|&|to)$/.test(joint.join(""))) return;
    if (next?.index === right.index + 1) return;
    const fits = [left, right].every(({ value }) => value >= least && value <= most);
    if (!fits || left.value === right.value || Math.abs(left.value - right.value) > between) return;
    for (const one of [left, right]) one.named = "temperature";
    left.place = "return_air";
    right.place = "supply_air";
  });
}
