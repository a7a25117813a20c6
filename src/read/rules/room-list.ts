import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

const rooms = /^(?:rooms|rms|zones|suites|apartments|apts)\s*[\da-z]/;
const joint = /^(?:,|\/|and|&|n|plus)$/;

/** Where a list of numbers behind an item ends: whole numbers without a unit, as a room has. */
function endOf(items: readonly Item[], first: number): number {
  let end = first + 1;
  for (let at = end; at < items.length; at++) {
    if (joint.test(textAt(items, at))) continue;
    const item = items[at];
    const room = freeNumber(item) && item.unit === undefined && Number.isInteger(item.value);
    if (!room || !Number.isNaN(item.high)) break;
    end = at + 1;
  }
  return end;
}

/** "rooms 11 12 and 14 cooling again": numbers behind "rooms" are rooms, whatever was measured last. */
export const roomLists: Rule = {
  name: "rooms <numbers>",
  needs: "number",
  apply: (note: Note) => {
    const { items } = note;
    items.forEach((item, index) => {
      if (
        item.kind !== itemKind.subject ||
        !rooms.test(note.plain.slice(item.from, item.to)) ||
        item.owner !== undefined
      )
        return;
      const end = endOf(items, index);
      const last = items[end - 1];
      if (end === index + 1 || last === undefined) return;
      for (const one of items.slice(index, end)) one.owner = roomLists.name;
      note.statements.push({
        kind: "note",
        about: "room",
        said: note.text.slice(item.from, last.to),
        spans: [[item.from, last.to]],
        rule: roomLists.name,
      });
    });
  },
};
