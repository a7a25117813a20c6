import type { Context } from "./context.ts";
import { type Item, itemKind, newItem } from "./item.ts";

/** Parts and machines that hang on one outdoor unit with the heads. */
const multi = /^(?:odu|idu|eevs?|levs?|exvs?|bc|bs|branch|mini|multi|ductless|minisplit)$/;
const noun = /^(?:head|hd)$/;

/** The most heads on one outdoor unit whose number is one digit. */
const most = 9;

/** The most heads on one outdoor unit: less than any head pressure. Common practice, no source. */
const mostOfAll = 64;
const verb = /^(?:is|was|'s|s|still|keeps|stays|got)$/;
const state =
  /^(?:switched|turned|off|set|calling|satisfied|dripping|drips|blows|blowing|leaking|leaks|iced|frozen|frosted|cooling|heating)$/;

/** "head 12 is switched off", "head 23 drips": what no pressure does. */
function isIndoor(items: readonly Item[], at: number): boolean {
  const behind = items.slice(at + 2, at + 4).map(({ text }) => text);
  return state.test(behind[0] ?? "") || (verb.test(behind[0] ?? "") && state.test(behind[1] ?? ""));
}

function numberOf(items: readonly Item[], at: number): number {
  const next = items[at + 1];
  const named = noun.test(items[at]?.text ?? "") && next?.kind === itemKind.number;
  if (!named || next.unit !== undefined || next.series !== undefined || next.colon) return 0;
  const highest = isIndoor(items, at) ? mostOfAll : most;
  return Number.isInteger(next.value) && next.value <= highest ? next.value : 0;
}

/** "hd 1 lvg 58": its air, nobody leaves. */
function airLeaving(items: readonly Item[], at: number): void {
  const [word, value] = items.slice(at, at + 2);
  if (!/^(?:lvg|leaving)$/.test(word?.text ?? "") || value?.kind !== itemKind.number) return;
  if (word === undefined) return;
  word.kind = itemKind.label;
  word.label = { place: "supply_air", hint: "temperature" };
  word.signs = undefined;
}

/** "hd1 71 112 hd2 70 109": the number is glued to its noun, or there are several, or what hangs on them is told. */
export function headsByNumber(items: Item[], { readings, units }: Context): void {
  const numbers = new Set(items.map((_, at) => numberOf(items, at)));
  numbers.delete(0);
  if (numbers.size === 0) return;
  // "suction 1 18 head 3 85" may be a gauge's figure heard in two
  const heard = items.some(({ label }) => label?.place === "suction");
  const known = readings.some(({ subject }) => subject?.startsWith("head "));
  const several = known || numbers.size > 1 || items.some(({ text }) => multi.test(text));
  for (let at = 0; at + 1 < items.length; at++) {
    const [name, number] = [items[at], items[at + 1]];
    const value = numberOf(items, at);
    if (name === undefined || number === undefined || value === 0) continue;
    // "th 4.1k hd 2": so few psi no gauge shows, and no further figure makes it a pressure heard in two
    const lone = units === "us" && items[at + 2]?.kind !== itemKind.number;
    if ((heard || !(several || lone)) && number.from !== name.to) continue;
    const head = newItem(itemKind.subject, name.from, number.to, `head ${value}`);
    head.subject = `head ${value}`;
    items.splice(at, 2, head);
    airLeaving(items, at + 1);
  }
}
