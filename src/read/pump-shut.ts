import type { Context } from "./context.ts";
import { type Item, itemKind, newItem } from "./item.ts";
import { signIndex } from "./signs.ts";

const verb = /^(?:shut|shutting|closed|turned|turning|killed|cut|kill)$/;
const thing = /^(?:it|her|pump|valve)$/;
const vacuum = /^(?:vac|vacuum|evac|micron|microns|torr)/;
const isolated = signIndex("do:vacuum_isolated");

/** "shut off 10 min 355", "cut off for 15, 410": what the gauge did then follows. */
function isFigure(items: readonly Item[], at: number): boolean {
  const led = /^(?:for|[,:])$/.test(items[at]?.text ?? "") ? 1 : 0;
  return items[at + led]?.kind === itemKind.number;
}

/** Where "shut it off", "turned the pump off", "killed the pump" ends; `at` where it does not stand there. */
function endOf(items: readonly Item[], at: number): number {
  const word = items[at]?.text ?? "";
  if (!verb.test(word)) return at;
  const off = items[at + 1]?.text === "off" ? 1 : 0;
  const the = items[at + 1 + off]?.text === "the" ? 1 : 0;
  const end = at + 2 + off + the;
  const named = items[end - 1]?.text ?? "";
  if (!thing.test(named)) return off > 0 && isFigure(items, at + 2) ? at + 2 : at;
  const behind = items[end]?.text === "off" ? 1 : 0;
  return off + behind > 0 || (word.startsWith("kill") && named === "pump") ? end + behind : at;
}

/** "down to 420 shut it off came up to 780" while a vacuum is pulled: the circuit is shut in, the power stays. */
export function pumpShut(items: Item[], { testing, readings }: Context): void {
  const pulled = testing === "vacuum" || readings.at(-1)?.quantity === "vacuum";
  if (!pulled && !items.some(({ text }) => vacuum.test(text))) return;
  for (let at = 0; at < items.length; at++) {
    const [first, last] = [items[at], items[endOf(items, at) - 1]];
    if (first === undefined || last === undefined || last.to <= first.to) continue;
    const shut = newItem(itemKind.word, first.from, last.to, "isolated");
    shut.signs = [isolated];
    shut.signsTo = last.to;
    items.splice(at, endOf(items, at) - at, shut);
  }
}
