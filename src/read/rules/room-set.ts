import { isStrongBreak, isWeakBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { isLived, settingAt } from "../rooms-air.ts";
import { role } from "../word.ts";
import { isOrdinalUpTo, textAt } from "./near.ts";

/** No house has more floors than such a number tells; our choice, no source. */
const highest = 9999;
const small = /^(?:room|rm|space|zone|now|at|actual|act|reads|reading|shows|but|,|temp|temps)$/;

/** Behind the setting the air that it is set for: where that figure stands, or -1. */
function actualAt({ items, context }: Note, set: number): number {
  let at = set + 1;
  let said = false;
  while (at < set + 5) {
    const item = items[at];
    if (item?.label?.place !== "indoor_air" && !small.test(item?.text ?? "")) {
      if (((item?.roles ?? 0) & role.is) === 0) break;
    }
    said ||= item?.text !== ",";
    at++;
  }
  return said && isLived(items[at], context.units) ? at : -1;
}

function begins(before: Item | undefined): boolean {
  if (before === undefined || isStrongBreak(before) || isWeakBreak(before)) return true;
  return before.kind === itemKind.line || /^(?:and|n|&|,|rm|rms|rooms?|then|in)$/.test(before.text);
}

/** "118 set 70 room 77, 121 set 70 rm 75": a room by its number alone, what it is set to and what it has. */
export const roomSet: Rule = {
  name: "<room> set <degrees>, room <degrees>",
  needs: "number",
  apply: (note) => {
    const { items, context } = note;
    let last = -1;
    items.forEach((item, i) => {
      if (!isOrdinalUpTo(item, highest)) return;
      if (!begins(items[i - 1]) && last !== i - 1) return;
      const set = settingAt(items, i + 1, context.units);
      if (set < 0) return;
      const end = actualAt(note, set);
      const known = context.rooms?.has(textAt(items, i)) === true;
      if (end < 0 && !known) return;
      state(note, roomSet.name, [i, i + 1], { kind: "note", about: "place" });
      last = end;
    });
  },
};
