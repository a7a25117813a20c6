import { itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber, gluedEnd } from "./near.ts";

/** "dip 3 on, 4 off": the switches behind the first go by their numbers alone. */
function switchesOn(note: Note, i: number): void {
  const { items } = note;
  for (let at = i + 1; at < items.length; at++) {
    const item = items[at];
    if (/^(?:on|off|up|down|,|and|&)$/.test(item?.text ?? "")) continue;
    if (!freeNumber(item) || item.unit !== undefined) return;
    if (!/^(?:on|off|up|down|,|and|&)$/.test(items[at + 1]?.text ?? "")) return;
    state(note, asideNumbers.name, [at, at + 1], { kind: "note", about: "place" });
  }
}

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
      if (/^dips?\b/.test(item.text)) switchesOn(note, i);
      state(note, asideNumbers.name, [i, gluedEnd(note.items, i)], {
        kind: "note",
        about: /^(?:cylinder|cyl|bottle|tank|drum)\b/.test(note.plain.slice(item.from))
          ? "cylinder"
          : "place",
      });
    });
  },
};
