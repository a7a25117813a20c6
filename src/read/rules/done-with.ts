import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** "done w 12", "finished with 3, on to 4": machines by their numbers alone. */
export const doneWith: Rule = {
  name: "done with <number>",
  heads: "done|finished|through|onto|on",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    let before = false;
    items.forEach((item, i) => {
      if (!freeNumber(item) || item.unit !== undefined || !Number.isInteger(item.value)) return;
      const [verb, joint, next] = [
        textAt(items, i - 2),
        textAt(items, i - 1),
        textAt(items, i + 1),
      ];
      const done = /^(?:done|finished|through)$/.test(verb) && /^(?:w|with)$/.test(joint);
      const on = before && (joint === "onto" || (verb === "on" && joint === "to"));
      if ((!done && !on) || !/^(?:|[,.]|and|n|now|\n)$/.test(next)) return;
      before = true;
      state(note, doneWith.name, [i, i + 1], { kind: "note", about: "place" });
    });
  },
};
