import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const blows = /^(?:blows|blowing|blow|discharging)$/;

/** "201 blows 32, 202 31, 203 33": each room by its number, and the air that its unit blows. */
export function roomsBlow(drafts: readonly Draft[], items: readonly Item[]): void {
  const first = items.findIndex(({ text }) => blows.test(text));
  if (first < 0) return;
  for (const draft of drafts) {
    if (draft.index < first || draft.place !== "indoor_air") continue;
    const words = items.slice(first, draft.index);
    const own = words.some(({ text }) => /^(?:room|rooms|return|stat|space)$/.test(text));
    if (!own && words.every(({ kind }) => kind !== itemKind.line)) draft.place = "supply_air";
  }
}
