import { type Item, itemKind } from "../item.ts";
import { textAt } from "./near.ts";

/** "started it up at one forty", "started the pump at ten to five": what is started has no value then. */
export function ofStart(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (textAt(items, i - 1) !== "at" || item?.spoken !== true || item.unit !== undefined)
    return false;
  if (item.value >= 100 && item.value % 100 === 0) return false;
  const led = items.slice(Math.max(0, i - 6), i - 1);
  const verb = led.findLastIndex(({ text }) =>
    /^(?:started|restarted|starting|reset|fired)$/.test(text),
  );
  const object = led.slice(verb + 1);
  if (verb < 0) return false;
  if (!/^(?:it|her|him|the|my|that)$/.test(object[0]?.text ?? "")) return false;
  return !object.some(
    ({ kind, text, label }) =>
      kind === itemKind.number ||
      kind === itemKind.sign ||
      /^(?:vac|vacuum|test|stat|thermostat)$/.test(text) ||
      label?.place !== undefined,
  );
}
