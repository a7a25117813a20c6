import { type Item, itemKind, newItem } from "./item.ts";
import type { Building } from "./items.ts";
import { tokenKind } from "./token.ts";

/** V that a tester of insulation puts out. */
const testerVolts: ReadonlySet<number> = new Set([250, 500, 1000, 2500]);
/** Ohms that a motor's windings have at most. Common practice, no source. */
const mostOhms = 20;

const all = /^(?:all|each|every|both|them|everything)$/;

/** Behind "1.1": "meg all 3 over 200", where pairs of windings were told and the test has a figure of its own. */
function allOfThem({ tokens, items }: Building, at: number): boolean {
  if (!all.test(tokens[at + 1]?.text ?? "")) return false;
  const pairs = items.filter(({ points }) =>
    points?.some((one) => one.length === 2 && !one.includes("ground")),
  );
  const figures = tokens.slice(at + 2, at + 7).filter(({ kind }) => kind === tokenKind.number);
  return pairs.length > 1 && figures.some(({ value }) => value > 3);
}

/** "u-w .62 meg 500v 200+": behind ohms of a winding the word leads the test that comes, no unit of what stands before. */
export function testAhead(build: Building, at: number): boolean {
  const { tokens, items } = build;
  const [value, word, volts, unit, next] = tokens.slice(at - 1, at + 4);
  if (!/^megs?$/.test(word?.text ?? "") || word?.glued === true || next === undefined) return false;
  if ((value?.value ?? mostOhms) < mostOhms && allOfThem(build, at)) return true;
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
    if (!/^(?:meg(?:s|ged|d)?|mgg?d)$/.test(word?.text ?? "") || volts === undefined) continue;
    const pair = items[at - 2]?.points?.[0]?.length === 2;
    const tested = volts.unit?.figure === "V" && testerVolts.has(volts.value);
    if ((!tested && !(pair && all.test(volts.text))) || value.value >= mostOhms) continue;
    items.splice(at, 0, newItem(itemKind.sign, value.to, value.to, ","));
  }
}
