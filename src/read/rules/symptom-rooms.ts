import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { carries, signIndex } from "../signs.ts";
import { freeNumber, textAt } from "./near.ts";

const symptoms = [signIndex("no_cool"), signIndex("no_heat"), signIndex("not_heating")];
const lead = /^(?:in|for|at|to|on)$/;
const joint = /^(?:,|\/|and|&|n)$/;

/** The rooms that stand behind "in": whole numbers without a unit, one after the other. */
function roomsFrom(items: readonly Item[], from: number): readonly number[] {
  const rooms: number[] = [];
  for (let i = from; i < items.length; i++) {
    const item = items[i];
    if (item === undefined) break;
    if (freeNumber(item) && item.unit === undefined && Number.isInteger(item.value)) {
      rooms.push(i);
      continue;
    }
    if (!joint.test(item.text) || items[i + 1]?.kind !== itemKind.number) break;
  }
  return rooms;
}

function complain(note: Note, sign: number, rooms: readonly number[]): void {
  const first = note.items[sign];
  const last = note.items[rooms[rooms.length - 1] ?? sign];
  if (first === undefined || last === undefined) return;
  const names = rooms.flatMap((index) => {
    const item = note.items[index];
    return item === undefined ? [] : [note.text.slice(item.from, item.to)];
  });
  for (const index of rooms) {
    const item = note.items[index];
    if (item !== undefined) item.owner = symptomRooms.name;
  }
  note.statements.push({
    kind: "complaint",
    places: names,
    symptom: note.text.slice(first.from, first.signsTo),
    fine: [],
    said: note.text.slice(first.from, last.to),
    spans: [[first.from, last.to]],
    rule: symptomRooms.name,
  });
}

/** "no heat in 204 206 210", "not cooling in 12, 14 and 15": rooms by their numbers alone. */
export const symptomRooms: Rule = {
  name: "<symptom> in <numbers>",
  needs: "signs",
  apply: (note) => {
    note.items.forEach((item, i) => {
      if (!symptoms.some((sign) => carries(item, sign))) return;
      let at = i + 1;
      while (at < note.items.length && (note.items[at]?.from ?? 0) < item.signsTo) at++;
      if (!lead.test(textAt(note.items, at))) return;
      const rooms = roomsFrom(note.items, at + 1);
      if (rooms.length > 0) complain(note, i, rooms);
    });
  },
};
