import type { Context } from "./context.ts";
import { type Item, itemKind } from "./item.ts";
import { waterMachine } from "./water-sides.ts";

const wet =
  /^(?:boiler|boilers|glycol|brine|hydronic|hydronics|radiant|chilled|chw|hhw|hw|chiller|chlr|barrel|tower|cond|condenser|cdw|cw|loop)$/;
const ofCondenser = /^(?:tower|cond|condenser|cdw|cw)$/;

/** Does a figure that has no unit, or degrees, stand right behind? */
function degreesBehind(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  if (next?.kind !== itemKind.number) return false;
  return next.unit === undefined || next.unit.dimension === "temperature";
}

/** "boiler sup 178", "chlr 2 supply 44": right before the label, so that "chw valve 40%, supply 55" stays air. */
function wetBefore(items: readonly Item[], at: number): boolean {
  return items
    .slice(Math.max(0, at - 1), Math.max(0, at))
    .some(({ text, subject }) => wet.test(text) || waterMachine.test(subject ?? ""));
}

/** "chw pump 1. 12.1 11.9 12.0 running": which pump it is, no warmth of the water. */
export function waterPump(items: readonly Item[]): void {
  items.forEach((item, at) => {
    const pump = items[at + 1];
    const named = /^pump\b/.test(pump?.subject ?? "") || pump?.text === "pump";
    const wetWord = item.label?.place ?? item.label?.hint ?? item.label?.quantity;
    const degrees = /^(?:in|out|ent|entering|lvg|leaving|supply|return)$/;
    if (
      degrees.test(items[at + 2]?.text ?? "") ||
      !named ||
      wetWord === undefined ||
      !pumped.test(item.text)
    )
      return;
    item.kind = itemKind.word;
    item.label = undefined;
  });
}

const pumped = /^(?:cond|condenser|chw|chilled|cw|cdw|hw|hhw|hot|heating|tower|glycol|loop)\b/;

/**
 * "boiler sup 178 ret 161", "flow 7.1 return 12.4": the two sides of a loop, no air and no amount that flows.
 * Where the flow is told beside a return, the water's way out is meant.
 */
export function waterLoop(items: readonly Item[], units: Context["units"]): void {
  const back = items.findIndex(
    ({ label }, at) => label?.place === "return_air" && degreesBehind(items, at),
  );
  if (back < 0) return;
  const flow = items.findIndex(
    (item, at) =>
      /^(?:flow|pump|water)$/.test(item.text) &&
      item.label?.quantity === "water_flow" &&
      degreesBehind(items, at),
  );
  const out = items.findIndex(
    ({ label }, at) => label?.place === "supply_air" && degreesBehind(items, at),
  );
  const loop = [out, back, flow].some((at) => wetBefore(items, at));
  const far = (items[flow + 1]?.value ?? 0) / (items[back + 1]?.value ?? 1);
  const side = flow >= 0 && (loop || units === "si") && far > 0.5 && far < 2;
  const ahead = out >= 0 ? (loop ? out : -1) : side ? flow : -1;
  const [first, second] = [items[ahead], items[back]];
  if (first === undefined || second === undefined) return;
  // "cond supply 80 return 88": what the tower sends is what the condenser gets
  const tower = [ahead, back].some((at) => ofCondenser.test(items[at - 1]?.text ?? ""));
  first.label = { place: tower ? "condenser_in" : "water_out", hint: "temperature" };
  second.label = { place: tower ? "condenser_out" : "water_in", hint: "temperature" };
}
