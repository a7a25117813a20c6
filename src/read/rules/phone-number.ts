import type { Item } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** "555-0142", "555 0142", "(312) 555-0142" */
export const phones: Rule = {
  name: "<three digits>-<four digits>",
  needs: "number",
  apply: (note) => {
    note.items.forEach((item, i) => {
      if (!freeNumber(item)) return;
      if (called(note.items, i)) {
        state(note, phones.name, [i, i + 1], { kind: "note", about: "phone" });
        return;
      }
      if (item.numberTo - item.from !== 3 || item.unit !== undefined) return;
      const dash = textAt(note.items, i + 1);
      const at = dash === "-" || dash === "." ? i + 2 : i + 1;
      const last = note.items[at];
      if (
        !freeNumber(last) ||
        last.unit !== undefined ||
        !(note.items[i + 1]?.glued || callBefore(note.items, i)) ||
        last.numberTo - last.from !== 4 ||
        !/^\d{4}$/.test(last.text)
      )
        return;
      if (at === i + 1 && !/^555$/.test(item.text)) return;
      state(note, phones.name, [i, at + 1], { kind: "note", about: "phone" });
    });
  },
};

function callBefore(items: readonly Item[], i: number): boolean {
  const words = /^(?:call|phone|cell|mobile|number|reach|ring|tel|dial|callback)$/;
  return items.slice(Math.max(0, i - 6), i).some(({ text }) => words.test(text));
}

/** "call me on five five five oh one nine one", "his cell is 5550191" */
function called(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item === undefined || item.unit !== undefined || item.fraction) return false;
  if (item.value < 1e6 || item.value > 1e11 || !Number.isInteger(item.value)) return false;
  return callBefore(items, i);
}
