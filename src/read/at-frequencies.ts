import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "amps at 60hz 41, at 45hz 29": at each frequency what was drawn there, no second frequency. */
export function atFrequencies(list: readonly Draft[], items: readonly Item[]): void {
  const amps = items.some(({ label, text }) => label?.quantity === "current" || text === "amps");
  if (!amps) return;
  list.forEach((draft, order) => {
    const left = list[order - 1];
    if (left?.unit?.dimension !== "frequency" || !left.ownUnit || draft.unit !== undefined) return;
    const at = /^(?:at|@)$/.test(items[left.index - 1]?.text ?? "");
    if (at && draft.index === left.index + 1 && draft.named === undefined) draft.named = "current";
  });
}
