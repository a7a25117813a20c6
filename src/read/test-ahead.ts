import { type Item, itemKind, newItem } from "./item.ts";
import type { Building } from "./items.ts";

/** V that a tester of insulation puts out. */
const testerVolts: ReadonlySet<number> = new Set([250, 500, 1000, 2500]);
/** Ohms that a motor's windings have at most. Common practice, no source. */
const mostOhms = 20;

/** "u-w .62 meg 500v 200+": behind ohms of a winding the word leads the test that comes, no unit of what stands before. */
export function testAhead({ tokens, items }: Building, at: number): boolean {
  const [value, word, volts, unit, next] = tokens.slice(at - 1, at + 4);
  if (!/^megs?$/.test(word?.text ?? "") || word?.glued === true || next === undefined) return false;
  if (!testerVolts.has(volts?.value ?? 0) || !/^v(?:dc|olts?)?$/.test(unit?.text ?? ""))
    return false;
  if (!((value?.value ?? mostOhms) < mostOhms)) return false;
  return items.some(({ label }) => label?.quantity === "winding_resistance");
}

/** The test begins there: a comma is put where it was left out. */
export function testApart(items: Item[]): void {
  for (let at = 1; at + 2 < items.length; at++) {
    const [value, word, volts] = items.slice(at - 1, at + 2);
    if (value?.kind !== itemKind.number || value.unit !== undefined) continue;
    if (!/^(?:meg(?:s|ged|d)?|mgg?d)$/.test(word?.text ?? "") || volts?.unit?.figure !== "V")
      continue;
    if (!testerVolts.has(volts.value) || value.value >= mostOhms) continue;
    items.splice(at, 0, newItem(itemKind.sign, value.to, value.to, ","));
  }
}
