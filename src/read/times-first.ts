import { classOf } from "./carrier.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "1/10 min: 420/980 meg", "1min 10min, then 420 980": as many times as values, all before the first or behind the last. */
export function timesFirst(drafts: readonly Draft[], items: readonly Item[]): void {
  const times = items.flatMap((item, i) => (classOf(item) === "T" ? [i] : []));
  const [first] = drafts;
  if (first === undefined || times.length !== drafts.length || times.length < 2) return;
  const last = drafts[drafts.length - 1]?.index ?? 0;
  const ahead = times.every((i) => i < first.index);
  if (!ahead && times.some((i) => i < last)) return;
  drafts.forEach((draft, order) => {
    const item = items[times[order] ?? -1];
    if (item?.unit === undefined) return;
    draft.after = item.value * item.unit.factor;
    draft.lasting = undefined;
  });
}
