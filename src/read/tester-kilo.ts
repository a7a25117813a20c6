import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { testerVolts } from "./tester-volts.ts";

/** "all three 1.8 gig @1k": beside megohms what was applied is thousands of volts, no ohms. */
export function testerKilo(items: readonly Item[]): void {
  const megohms = items.some(({ unit }) => unit?.dimension === "resistance" && unit.factor >= 1e6);
  if (!megohms) return;
  items.forEach((item, i) => {
    if (item.kind !== itemKind.number || item.unit?.figure !== "kilohm") return;
    if (!/^(?:@|at)$/.test(items[i - 1]?.text ?? "")) return;
    if (item.to !== item.unitFrom + 1 || !testerVolts.has(item.value * 1000)) return;
    item.value *= 1000;
    item.unit = unitCalled("V");
  });
}
