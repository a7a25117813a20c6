import type { Item } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

const gear =
  /^(?:contactor|contactors|cntctr|contacter|brkr|bkr|breaker|breakers|disco|disconnect|switch|relay|block|fused|mcb|mccb|rcbo|isolator|starter)$/;

/** Gear within a few items of `i`, in its own clause. */
function gearNear(items: readonly Item[], i: number): boolean {
  for (const step of [-1, 1])
    for (let at = i + step; Math.abs(at - i) <= 5; at += step) {
      const text = textAt(items, at);
      if (gear.test(text)) return true;
      if (/^(?:|[.,;\n])$/.test(text)) break;
    }
  return false;
}

/** "contactor 2p 40a": poles, no hour of the afternoon. */
export const poleCounts: Rule = {
  name: "<number>p <gear>",
  heads: "p",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item) || item.unit !== undefined || item.value < 1 || item.value > 4) return;
      const letter = items[i + 1];
      if (letter?.text !== "p" || !letter.glued || textAt(items, i + 2) === "m") return;
      if (gearNear(items, i))
        state(note, poleCounts.name, [i, i + 2], { kind: "note", about: "size" });
    });
  },
};
