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
      if (first.kind !== itemKind.number || !freeNumber(first)) return;
      const at = [i + 2, i + 1, i + 3].find((one) => items[one]?.kind === itemKind.number);
      const [second, result] = [items[at ?? -1], items[(at ?? -1) + 2]];
      if (at === undefined || second === undefined || result?.kind !== itemKind.number) return;
      if (textAt(items, at + 1) !== "=" || !freeNumber(second) || !freeNumber(result)) return;
      const joint = textAt(items, i + 1);
      const words = /^(?:-|\+|minus|less|to|→|end|ended|ending|final|finish|finished|now|,|after)$/;
      if (at > i + 1 && !words.test(joint) && !words.test(textAt(items, at - 1))) return;
      if (first.unit !== undefined && second.unit !== undefined && result.unit === undefined)
        return;
      const sign = joint === "+" ? 1 : -1;
      if (Math.abs(first.value + sign * second.value - result.value) > 0.11) return;
      state(note, sums.name, [i, at + 1], { kind: "note", about: "reckoned" });
    });
  },
};
