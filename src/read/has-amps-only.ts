import type { Reading } from "../model.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const motors = /^(?:compressor|fan|motor|heater)\b/;
const words = /^(?:heater|heaters|htr|htrs|motor|motors|fan|fans|blower)$/;

/** "new heater in 4,2", "fan 2 3.8": of what has amps and no weight that anyone tells. */
export function hasAmpsOnly({ subject, before }: Draft, items: readonly Item[]): boolean {
  return motors.test(subject ?? "") || before.some((index) => words.test(items[index]?.text ?? ""));
}

/** "pump 1 44.1" behind the water's degrees: what goes by a pump's name has amps and gauges. */
export function isPumpsOwn({ subject }: Draft, last: Reading): boolean {
  return last.quantity === "temperature" && /^pump\b/.test(subject ?? "");
}
