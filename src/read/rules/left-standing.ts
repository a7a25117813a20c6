import { isOneWord, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { leavesThing } from "./leaves-thing.ts";
import { textAt } from "./near.ts";

/** "leaving the 300 on overnight", "left 250 in it": a value of before that stays in the machine, not read again. */
export const leftStanding: Rule = {
  name: "leaving <number> on|in",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      // "leaving water 54 on …" names what is measured
      if (!isOneWord(item)) return;
      if (!/^(?:leaving|left|leave)$/.test(item.text) || !leavesThing(items, i + 1)) return;
      const at = /^(?:the|that|those)$/.test(textAt(items, i + 1)) ? i + 2 : i + 1;
      const number = items[at];
      if (number?.kind !== itemKind.number || number.owner !== undefined || number.colon) return;
      const behind = items[at + 2];
      // "leaving 55 in 72" is air, "left 5 on site" people
      if (behind?.kind === itemKind.number || behind?.text === "site") return;
      if (!/^(?:on|in)$/.test(textAt(items, at + 1))) return;
      state(note, leftStanding.name, [i, at + 2], { kind: "note", about: "left standing" });
    });
  },
};
