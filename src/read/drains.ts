import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

const later = role.change | role.next;

/** "bus 580 right after, 5 min later 22": a bus that drains, its second value bare but for the time. */
export function drains(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.place !== "dc_bus" || left.rating !== undefined) return;
    const bare =
      right.unit === undefined &&
      right.named === undefined &&
      right.hint === undefined &&
      right.place === undefined &&
      right.points === undefined;
    if (!bare || right.grounded || !(right.value < left.value)) return;
    // "bus 619 volts then 233 223 221 megs": the first of a row that tells its own unit
    if (items[right.index + 1]?.kind === itemKind.number) return;
    const between = items.slice(left.index + 1, right.index);
    const labelled = between.some(({ label }) => label?.thing !== undefined);
    // "bus 640 at idle 622 at load"
    const behind = `${items[right.index + 1]?.text} ${items[right.index + 2]?.text}`;
    const loaded = /^(?:at|under) (?:full )?load|^(?:loaded|running)\b/.test(behind);
    // "bus 640 idle, 18.2 running": no load takes a bus down so far
    if (loaded && right.value < left.value / 2) return;
    const timed =
      loaded || right.after !== undefined || between.some(({ roles }) => (roles & later) !== 0);
    if (labelled || !timed) return;
    right.named = "voltage";
    right.quantity = "voltage";
    right.place = left.place;
    right.kind = left.kind;
    right.subject ??= left.subject;
    if (left.unit?.dimension === "voltage") right.unit = left.unit;
  });
}
