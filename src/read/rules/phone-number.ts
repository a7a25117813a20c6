import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** "555-0142", "555 0142", "(312) 555-0142" */
export const phones: Rule = {
  name: "<three digits>-<four digits>",
  needs: "number",
  apply: (note) => {
    note.items.forEach((item, i) => {
      if (!freeNumber(item) || item.numberTo - item.from !== 3 || item.unit !== undefined) return;
      const dash = textAt(note.items, i + 1);
      const at = dash === "-" || dash === "." ? i + 2 : i + 1;
      const last = note.items[at];
      if (
        !freeNumber(last) ||
        last.unit !== undefined ||
        !note.items[i + 1]?.glued ||
        last.numberTo - last.from !== 4 ||
        !/^\d{4}$/.test(last.text)
      )
        return;
      if (at === i + 1 && !/^555$/.test(item.text)) return;
      state(note, phones.name, [i, at + 1], { kind: "note", about: "phone" });
    });
  },
};
