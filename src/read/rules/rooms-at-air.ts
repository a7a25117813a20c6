import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Rooms by floor and number, and what air comes out of a grille, F and Cel. Common practice, no source. */
const rooms = { from: 100, to: 9999 } as const;
const blown = { us: [40, 130], si: [4, 55] } as const;

const joint = /^(?:,|and|&|n)$/;
const air = /^(?:grille|grilles|register|registers|diffuser|diffusers|vent|vents|supply)$/;

function isBare(item: Item | undefined): item is Item {
  return freeNumber(item) && item.unit === undefined && Number.isNaN(item.high) && !item.colon;
}

function isRoom(item: Item | undefined): boolean {
  return isBare(item) && /^[1-9]\d{2,3}$/.test(item.text) && item.value <= rooms.to;
}

function isBlown(item: Item | undefined, units: "us" | "si"): boolean {
  const [least, most] = blown[units];
  return isBare(item) && item.value >= least && item.value <= most;
}

/** The numbers in a row from `i`, each of its kind, and where the row ends. */
function rowOf(
  items: readonly Item[],
  i: number,
  fits: (item: Item | undefined) => boolean,
): { readonly row: readonly number[]; readonly end: number } {
  const row: number[] = [];
  let at = i;
  let end = i;
  while (fits(items[at])) {
    row.push(at);
    end = at + 1;
    at = joint.test(textAt(items, end)) ? end + 1 : end;
  }
  return { row, end };
}

/** Is a grille or the supply spoken of right behind? "57 out of the grille" */
function isAirBehind(items: readonly Item[], from: number): boolean {
  return items
    .slice(from, from + 4)
    .some(({ text, label }) => air.test(text) || label?.place === "supply_air");
}

/** "left 307 off": a room, or the head of it. */
function leftOff({ items }: Note, i: number): boolean {
  return (
    textAt(items, i - 1) === "left" &&
    /^(?:off|out|down|disabled|unplugged)$/.test(textAt(items, i + 1))
  );
}

/** "305 306 308 at 58 59 57 out of the grille", "307 57 off the grille": rooms by their numbers, and what comes out there. */
export const roomsAtAir: Rule = {
  name: "<rooms> at <degrees> out of the grille",
  needs: "number",
  apply: (note) => {
    const { items, context } = note;
    for (let i = 0; i < items.length; i++) {
      if (!isRoom(items[i])) continue;
      if (leftOff(note, i)) {
        state(note, roomsAtAir.name, [i, i + 1], { kind: "note", about: "place" });
        continue;
      }
      const before = items[i - 1];
      const begins =
        before === undefined || before.kind === itemKind.sign || before.kind === itemKind.line;
      const { row, end } = rowOf(items, i, isRoom);
      const at = /^(?:at|are|is|:|=)$/.test(textAt(items, end)) ? end + 1 : end;
      const warm = rowOf(items, at, (item) => isBlown(item, context.units));
      const several = row.length > 1 && row.length === warm.row.length && at > end;
      const one = row.length === 1 && warm.row.length === 1 && isAirBehind(items, warm.end);
      if (!several && !(begins && one)) continue;
      for (const room of row)
        state(note, roomsAtAir.name, [room, room + 1], { kind: "note", about: "place" });
      i = end;
    }
  },
};
