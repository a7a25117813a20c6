import { isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { testerVolts } from "./tester-volts.ts";

/** Where the tester was set before the first lead was named, and to what. */
export interface TesterFirst {
  readonly index: number;
  readonly volts: number;
}

const small = /^(?:,|:|-|to|and|the|on)$/;

/** A set voltage with its unit, and nothing but "to ground" between it and the first lead with a value. */
function heads(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.kind !== itemKind.number || item.owner !== undefined) return false;
  if (item.unit?.dimension !== "voltage" || !testerVolts.has(item.value * item.unit.factor))
    return false;
  let at = i + 1;
  while (small.test(items[at]?.text ?? "") || items[at]?.points?.length === 0) at++;
  const lead = items[at];
  if (lead?.kind !== itemKind.points || lead.points?.every((one) => one.length === 1) !== true)
    return false;
  return items[at + 1]?.kind === itemKind.number && items[at + 1]?.unit?.dimension !== "voltage";
}

/** Does each lead behind have one number, the last of them megohms? */
function rowOfMegohms(items: readonly Item[], i: number): boolean {
  const end = items.findIndex((item, at) => at > i && isStrongBreak(item));
  const behind = items.slice(i + 1, end < 0 ? items.length : end);
  const leads = behind.filter(({ kind, points }) => kind === itemKind.points && points?.length);
  const numbers = behind.filter(({ kind }) => kind === itemKind.number);
  const megohms = numbers.some(
    ({ unit }) => unit?.dimension === "resistance" && unit.factor >= 1e6,
  );
  return megohms && numbers.length >= leads.length;
}

/**
 * "500 V to ground T1 310 T2 305 T3 312 meg": the first number is what the tester was set to, and
 * each lead has the one behind it.
 */
export function testerFirst(items: readonly Item[]): TesterFirst | undefined {
  const index = items.findIndex((_, i) => heads(items, i));
  const item = items[index];
  if (item === undefined || item.unit === undefined || !rowOfMegohms(items, index))
    return undefined;
  const before = items.slice(0, index).findLastIndex(isStrongBreak);
  const first = items.slice(before + 1, index).every(({ kind, points }) => {
    return kind !== itemKind.number && (points?.length ?? 0) === 0;
  });
  if (!first) return undefined;
  item.owner = "<tester> <leads>";
  return { index, volts: item.value * item.unit.factor };
}

/** Gives the megohms behind it the voltage they were measured with. */
export function setFirst(tester: TesterFirst | undefined, drafts: readonly Draft[]): void {
  if (tester === undefined) return;
  for (const draft of drafts) {
    if (draft.quantity !== "insulation_resistance" || draft.rating !== undefined) continue;
    if (draft.testVoltage !== undefined || draft.earlier) continue;
    draft.testVoltage = tester.volts;
    draft.shared.push(tester.index);
  }
}
