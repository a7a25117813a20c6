import { itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { gluedEnd } from "./near.ts";

/** "room 412", "panel 2B", "gate code 7719#": a name keeps its number. */
export const asideNumbers: Rule = {
  name: "<place name> <number>",
  needs: "aside",
  apply: (note) => {
    note.items.forEach((item, i) => {
      if (
        item.kind !== itemKind.subject ||
        (item.roles & role.clock) === 0 ||
        item.owner !== undefined
      )
        return;
      state(note, asideNumbers.name, [i, gluedEnd(note.items, i)], {
        kind: "note",
        about: /^(?:cylinder|cyl|bottle|tank|drum)\b/.test(note.plain.slice(item.from))
          ? "cylinder"
          : "place",
      });
    });
  },
};
