import { type Item, itemKind } from "../item.ts";
import { freeNumber } from "./near.ts";

const led = /^(?:end|term|terminating|line|shunt|load)$/;

/** "120 ohm end resistor reads 59": what it is called by; its own figure comes behind, and is told by its name. */
export function resistorSize(items: readonly Item[], i: number): boolean {
  if (items[i]?.unit?.figure !== "ohm") return false;
  const at = led.test(items[i + 1]?.text ?? "") ? i + 2 : i + 1;
  const thing = items[at];
  if (thing === undefined || !/^(?:resistor|terminator)$/.test(thing.text)) return false;
  const read = items.slice(at + 1).find((one) => freeNumber(one));
  if (read === undefined || (read.unit !== undefined && read.unit.dimension !== "resistance"))
    return false;
  thing.kind = itemKind.label;
  thing.label = { quantity: "resistance", component: true };
  if (read.unit === undefined) {
    read.unit = items[i]?.unit;
    read.unitFrom = read.to;
  }
  return true;
}
