import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Defrosts of one day at most; common practice, no source. */
const most = 12;

/** "set for 4 defrosts a day 30 min each": how a timer is set, no reading. */
export const defrostsADay: Rule = {
  name: "<number> defrosts a day, <minutes> each",
  heads: "defrost|defrosts|defrosting",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item) || item.unit !== undefined) return;
      if (!Number.isInteger(item.value) || item.value < 1 || item.value > most) return;
      let end = i + 1;
      if (!/^defrost(?:s|ing)?$/.test(textAt(items, end))) return;
      end++;
      while (/^(?:a|per|each|every|day|in|24|hours?|a day|per day)$/.test(textAt(items, end)))
        end++;
      if (end === i + 2) return;
      state(note, defrostsADay.name, [i, end], { kind: "note", about: "defrost times" });
      while (/^(?:,|at|of|for)$/.test(textAt(items, end))) end++;
      const lasts = items[end];
      if (freeNumber(lasts) && lasts.unit?.dimension === "time")
        state(note, defrostsADay.name, [end, end + 1], { kind: "note", about: "defrost times" });
    });
  },
};
