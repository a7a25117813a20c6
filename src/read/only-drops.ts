import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "drops 70 to 41", "the pole drops 4.1 V": a verb, no diode's. */
export function onlyDrops(item: Item, draft: Draft, items: readonly Item[]): boolean {
  if (item.label?.quantity !== "diode_drop" || !/^drop/.test(item.text)) return false;
  return (
    draft.value >= 5 || items.some((one) => /^(?:contactors?|poles?|contacts?)$/.test(one.text))
  );
}

/** "superheat's a little high at 19", "running high": how much it is, no side of the machine. */
export function onlyHigh(item: Item, index: number, items: readonly Item[]): boolean {
  if (item.text !== "high" || item.to - item.from !== 4) return false;
  const before = items[index - 1]?.text ?? "";
  return /^(?:little|bit|way|too|kinda|pretty|real|really|running|sitting|super|still|so|very|tad|touch)$/.test(
    before,
  );
}
