import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const waits = /^(?:wait|waited|waiting)$/;
const small = /^(?:about|for|a|an|the|good|another|like|full|some|only|just)$/;
/** Longer than this nobody waits for a bus without naming the unit, min; our choice, no source. */
const longest = 60;

/** "waited ten, bus 3.2": minutes go without saying behind a wait. */
export function waitedMinutes(items: readonly Item[]): void {
  for (const [i, item] of items.entries()) {
    if (item.kind !== itemKind.number || item.unit !== undefined || item.colon) continue;
    if (!Number.isInteger(item.value) || item.value < 1 || item.value > longest) continue;
    let before = i - 1;
    while (small.test(items[before]?.text ?? "")) before--;
    if (!waits.test(items[before]?.text ?? "")) continue;
    // "waited 2 days", "waited on 2 guys"
    const next = items[i + 1];
    if (next?.kind === itemKind.word && !/^(?:and|then|so|before|now|but)$/.test(next.text))
      continue;
    item.unit = unitCalled("min");
  }
}
