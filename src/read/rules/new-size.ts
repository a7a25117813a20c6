import { isStrongBreak } from "../breaks.ts";
import type { Item } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

function ended(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item === undefined || isStrongBreak(item)) return true;
  return /^(?:,|and|but|so|now|then|it|its|she|shes|were|today|already)$/.test(item.text);
}

/** "putting in a new forty five five": what is put in is called by its size; nothing was weighed. */
export const newSize: Rule = {
  name: "a new <size>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item) || item.unit !== undefined || textAt(items, i - 1) !== "new") return;
      if (!/^(?:a|the|my)$/.test(textAt(items, i - 2))) return;
      // "put a new 45 in and she's running"
      const put = /^(?:in|on|back|up)$/.test(textAt(items, i + 1)) && ended(items, i + 2);
      const behind = put ? undefined : items[i + 1];
      if (behind !== undefined && !isStrongBreak(behind) && behind.text !== ",") return;
      state(note, newSize.name, [i, i + 1], { kind: "note", about: "size" });
    });
  },
};
