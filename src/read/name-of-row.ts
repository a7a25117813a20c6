import type { QuantityName } from "../quantities/list.ts";
import { type Item, itemKind } from "./item.ts";
import type { Building } from "./items.ts";

/** "voltage at cond fan 460 amps 2.1", "volts at the disconnect 207 205 209 amps 22": what is measured, where, and a row. */
export function nameOfRow({ items }: Building): QuantityName | undefined {
  let at = items.length - 1;
  while (items[at]?.unit === undefined && isOfRow(items[at])) at--;
  // "drop across the poles at 21 amps 0.04 0.05"
  if (/^(?:at|@)$/.test(items[at]?.text ?? "")) return undefined;
  for (let steps = 0; steps < 4; steps++) {
    const item = items[at - steps];
    if (item === undefined || item.kind === itemKind.number || item.kind === itemKind.sign) break;
    if (item.label?.quantity !== undefined)
      return item.label.component !== true && at - steps < items.length - 1
        ? item.label.quantity
        : undefined;
    if (item.label?.hint !== undefined && item.label.hint !== "voltage") break;
  }
  return undefined;
}

function isOfRow(item: Item | undefined): boolean {
  return item?.kind === itemKind.number || /^(?:[,/&]|and)$/.test(item?.text ?? "");
}

/** "118 psi 12 sh 340 psi": the name stands behind its figure, so it says nothing of the next. */
export function isNamedBehind({ items }: Building): boolean {
  const [before, number, label] = items.slice(-3);
  if (label?.label?.quantity === undefined || number?.kind !== itemKind.number) return false;
  return number.unit === undefined && before?.kind === itemKind.number && before.unit !== undefined;
}
