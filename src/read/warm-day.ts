import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** F, of a day that somebody names by its warmth: less than this may be a day of a month. Common practice, no source. */
const dayF = { from: 35, to: 125 } as const;

/** "on an 84 day", "on a 95 degree day": a day is called by its warmth, not by its number. */
function namesDay(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.kind !== itemKind.number || item.value < dayF.from || item.value > dayF.to)
    return false;
  const [on, article] = [items[i - 2]?.text ?? "", items[i - 1]?.text ?? ""];
  return /^(?:on|for|in|its|it's|at)$/.test(on) && /^an?$/.test(article);
}

/** "84 day" was put together as a length of time: here it is degrees. */
export function warmDay(items: readonly Item[]): void {
  items.forEach((item, i) => {
    if (item.unit?.dimension !== "time" || item.unit.figure !== "d") return;
    if (namesDay(items, i)) item.unit = unitCalled("F");
  });
}

/** The weather of that day. */
export function ofWarmDay(list: readonly Draft[], items: readonly Item[], plain: string): void {
  for (const draft of list) {
    const item = items[draft.index];
    if (item?.unit?.dimension !== "temperature" || !namesDay(items, draft.index)) continue;
    if (draft.place !== undefined || draft.named !== undefined) continue;
    if (!/\bday\b/.test(plain.slice(item.from, item.to + 5))) continue;
    draft.place = "outdoor_air";
    draft.hint = "temperature";
  }
}
