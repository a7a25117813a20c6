import { itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** "sh = 56-40 = 16", "56 - 40 = 16 sh": what was reckoned from stands before the result, and is none. */
export const sums: Rule = {
  name: "<number> - <number> = <number>",
  heads: "=|is",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((first, i) => {
      const [second, result] = [items[i + 2], items[i + 4]];
      if (first.kind !== itemKind.number || second?.kind !== itemKind.number) return;
      if (result?.kind !== itemKind.number || !/^[-+]$/.test(textAt(items, i + 1))) return;
      if (textAt(items, i + 3) !== "=" || ![first, second, result].every(freeNumber)) return;
      if (first.unit !== undefined || second.unit !== undefined) return;
      const sign = textAt(items, i + 1) === "-" ? -1 : 1;
      if (Math.abs(first.value + sign * second.value - result.value) > 0.11) return;
      state(note, sums.name, [i, i + 4], { kind: "note", about: "reckoned" });
    });
  },
};
