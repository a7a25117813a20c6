import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { takeFor } from "./recast.ts";

const fed = /^(?:gets|getting|got|has|having|sees|seeing|fed|with|and|plus|receives|receiving)$/;
const there = /^(?:it|there|coil|leads|plug|terminals)$/;
/** V that a coil or a heater is fed with: a control's, and the supplies; common practice, no source. */
const feeds: readonly (readonly [from: number, to: number])[] = [
  [20, 30],
  [105, 130],
  [195, 250],
  [265, 290],
  [380, 500],
];

/** "24.9 applied", "25 on it", "24.4 at it": it stands at the part whose ohms were told. */
function isThere(items: readonly Item[], at: number): boolean {
  const [next, noun] = [items[at + 1]?.text ?? "", items[at + 2]?.text ?? ""];
  return next === "applied" || (/^(?:on|at|to|across)$/.test(next) && there.test(noun));
}

/** "reversing valve coil 1420 ohms gets 230", "coil 18 ohm with 24.9 applied": what it is fed with are volts. */
export function fedWith(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((draft, order) => {
    const left = drafts[order - 1];
    if (left?.unit?.dimension !== "resistance" || left.gone || draft.gone) return;
    if (draft.unit !== undefined || draft.named !== undefined || draft.points !== undefined) return;
    if (draft.rating !== undefined || draft.subject !== undefined) return;
    const between = items.slice(left.index + 1, draft.index);
    const verb = between.find(({ text }) => fed.test(text))?.text ?? "";
    // "relay coil 160 ohms 24.9 across it"
    const bare = between.length === 0 && isThere(items, draft.index);
    if ((verb === "" && !bare) || between.length > 3) return;
    if (between.some(({ kind }) => kind === itemKind.points || kind === itemKind.subject)) return;
    // "6.1 and 25 on it": nothing but where it stands tells it from more ohms
    const surely = /^(?:gets|getting|sees|seeing|fed|receives|receiving)$/.test(verb);
    if (!surely && !isThere(items, draft.index)) return;
    const far = draft.value / left.value;
    if (surely && !isThere(items, draft.index) && far > 0.7 && far < 1.4) return;
    if (feeds.some(([from, to]) => draft.value >= from && draft.value <= to))
      takeFor(draft, "voltage", "V");
  });
}
