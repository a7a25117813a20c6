import { type Note, type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

const box = "(?:branch )?(?:box|bb|bc|selector) (?:[a-z]|\\d{1,2})\\b";
const more = "(?:(?: ?(?:and|&|,) ?| )\\d+(?:\\.\\d+)?)*";
const hangs = new RegExp(`^${more} (?:is|are|hang|hangs) (?:both |all )?(?:on|off|fed by) ${box}`);
const boxBefore = new RegExp(`\\b(?:on|off|from|fed by) ${box}`);
const too = new RegExp(`^${more} (?:too|also|is|are|as)\\b`);

/** "12 and 16 are on box B, 14 too": a room of that box. */
function isRoomOf(note: Note, i: number): boolean {
  const { items, plain } = note;
  const behind = plain.slice(items[i]?.to);
  if (hangs.test(behind)) return true;
  if (!/^(?:too|also|is|are|as|and|&|,)$/.test(textAt(items, i + 1))) return false;
  return boxBefore.test(plain.slice(0, items[i]?.from)) && too.test(behind);
}

/** Rooms that hang on a branch box by their numbers, no degrees of a cold box. */
export const onItsBox: Rule = {
  name: "<rooms> on box <name>",
  heads: "box|bb|bc|selector",
  needs: "number",
  apply: (note) => {
    note.items.forEach((item, i) => {
      if (!freeNumber(item) || item.unit !== undefined || item.fraction) return;
      if (isRoomOf(note, i))
        state(note, onItsBox.name, [i, i + 1], { kind: "note", about: "place" });
    });
  },
};
