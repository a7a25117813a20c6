import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const moves =
  /^(?:open(?:ed|ing|d|in)?|clos(?:ed?|ing|in)|adjust(?:ed|ing)?|turn(?:ed|ing)?|crack(?:ed|ing)?|chok(?:ed?|ing)|throttl(?:ed?|ing))$/;
const leads = /^(?:after|once|when|while|by|w|with|as|since|from|cause|cuz|because)$/;
/** How many words stand between "after" and the valve at most: "after i opened up the". */
const WORDS = 4;

/** "12 after I opened the EEV": what was done to the valve, no figure of it. */
export function valveMoved(draft: Draft, index: number, items: readonly Item[]): boolean {
  const valve = /^valve_/.test(items[index]?.label?.quantity ?? "");
  if (!valve || index < draft.index || draft.unit?.figure === "percent") return false;
  const before = items.slice(Math.max(draft.index + 1, index - WORDS), index);
  const led = before.some(({ text }) => leads.test(text));
  const around = [...before, ...items.slice(index, index + 3)];
  return led && around.some(({ text }) => moves.test(text));
}
