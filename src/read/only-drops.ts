import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "drops 70 to 41", "the pole drops 4.1 V": a verb, no diode's. */
export function onlyDrops(item: Item, draft: Draft, items: readonly Item[]): boolean {
  if (item.label?.quantity !== "diode_drop" || !/^drop/.test(item.text)) return false;
  return (
    draft.value >= 5 || items.some((one) => /^(?:contactors?|poles?|contacts?)$/.test(one.text))
  );
}
