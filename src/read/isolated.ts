import type { Item } from "./item.ts";
import { signIndex } from "./signs.ts";

/** "after the isolation ball", "isolation switch": what shuts a pipe or a circuit off. */
const shutters =
  /^(?:balls?|valves?|switch|disco|disconnect|damper|pads?|mounts?|springs?|relays?|transformer|kit|cocks?|flange|gate)$/;

/**
 * "vac 290, 340 iso 15 min": beside a vacuum "iso" is the pump valved off, no test of insulation.
 * `last` is the quantity that was read before this message.
 */
export function isolated(items: readonly Item[], last: string | undefined): void {
  if (!items.some(isShort)) return;
  items.forEach((item, i) => {
    const next = items[i + 1]?.text ?? "";
    // "350 at 1:40 iso'd": what was done
    if (isShort(item) && (shutters.test(next) || /^'?d$/.test(next) || item.apostrophe))
      item.label = undefined;
  });
  const pumped = items.some(
    ({ text, label, unit }) =>
      label?.quantity === "vacuum" ||
      /^(?:vac|vacuum|evac|microns?|torr)$/.test(text) ||
      unit?.figure === "micron" ||
      unit?.figure === "torr",
  );
  if (!pumped && last !== "vacuum") return;
  for (const item of items) {
    if (!isShort(item)) continue;
    item.label = undefined;
    // "vac 350 at 1:40 iso'd"
    if (!item.apostrophe && !/d$/.test(item.text)) continue;
    item.signs = [signIndex("do:vacuum_isolated")];
    item.signsTo = item.to;
  }
}

function isShort({ text }: Item): boolean {
  return /^iso(?:lation|'?d)?$/.test(text);
}
