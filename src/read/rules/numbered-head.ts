import { itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** The most heads that hang on one outdoor unit; common practice, no source. */
const HEADS = 64;

/** "15.9 V at head 8, 0.2 at head 9": beside volts the heads of a split are numbered. */
export const numberedHeads: Rule = {
  name: "head <number>",
  heads: "head|heads",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    if (!items.some((item) => item.unit?.dimension === "voltage")) return;
    items.forEach((item, i) => {
      const next = items[i + 1];
      if (!/^heads?$/.test(item.text) || next?.kind !== itemKind.number) return;
      if (!freeNumber(next) || next.unit !== undefined || !Number.isInteger(next.value)) return;
      if (next.value > HEADS || !/^(?:at|on|to|from|and|,)$/.test(textAt(items, i - 1))) return;
      state(note, numberedHeads.name, [i, i + 2], { kind: "note", about: "place" });
    });
  },
};
