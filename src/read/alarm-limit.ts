import type { Context } from "./context.ts";
import { type Item, itemKind } from "./item.ts";

const warm = /^(?:high|hi|low|lo|temp|temps|box|case|air|limit|set)$/;
const lead =
  /^(?:set|is|are|at|@|limit|limits|comes|on|in|above|below|over|under|temp|goes|off|:)$/;
/** F that no hour of the day has, and what no box's alarm is set above. Our choice, no source. */
const bounds = { hour: 12, most: 80 } as const;

function isLimit(item: Item | undefined, units: Context["units"], said: boolean): boolean {
  if (item?.kind !== itemKind.number || item.colon) return false;
  if (item.unit !== undefined) return item.unit.dimension === "temperature";
  if (item.value > bounds.most) return false;
  if (item.value < 0 || said) return true;
  // "alarm at 20" where a day has 24 hours
  return units === "us" && item.value > bounds.hour;
}

function asLimit(item: Item): void {
  item.kind = itemKind.label;
  item.label = { rating: "setpoint", quantity: "temperature" };
  item.signs = undefined;
  // no rule for codes takes it
  item.text = "limit";
}

/** "alarm at 20", "hi temp alarm at 20 low at -20": how warm the box may be before it calls, no code. */
export function alarmLimit(items: readonly Item[], units: Context["units"]): void {
  items.forEach((item, i) => {
    if (!/^alarms?$/.test(item.text) || item.kind === itemKind.number) return;
    let at = i + 1;
    while (lead.test(items[at]?.text ?? "") && at < i + 5) at++;
    const whole = item.label?.rating === "setpoint";
    if (!whole && !/^(?:at|@|above|below|over|under)$/.test(items[at - 1]?.text ?? "")) return;
    const words = items.slice(Math.max(0, i - 3), at);
    if (words.some(({ label, text }) => label?.hint === "pressure" && !warm.test(text))) return;
    const said = whole || words.some(({ text }) => warm.test(text));
    if (!isLimit(items[at], units, said)) return;
    asLimit(item);
    // "high" and "low" of an alarm are no sides of the circuit
    for (const word of items.slice(Math.max(0, i - 3), i))
      if (warm.test(word.text) && word.label?.hint !== undefined) word.label = undefined;
    const [other, lower, figure] = items.slice(at + 1, at + 4);
    const named = /^(?:low|lo|high|hi)$/.test(other?.text ?? "");
    if (other === undefined || !named || !/^(?:at|@)$/.test(lower?.text ?? "")) return;
    if (isLimit(figure, units, true)) asLimit(other);
  });
}
