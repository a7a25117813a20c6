import type { Item } from "../item.ts";
import { type Note, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";
import { SIZE } from "./size-words.ts";

const laid = /^(?:replaced|ran|laid|pulled|cut|added|changed|need|needs|needed|used)$/;

/** A small m that stands alone behind its figure. */
function isMetres(note: Note, item: Item): boolean {
  const mega = item.unit?.figure === "megohm" && note.text.charAt(item.unitFrom) === "m";
  return mega && item.to === item.unitFrom + 1;
}

/** "50 ft of 18/5", "40 ft of 1/2": a length of something. */
export function lengthOf(note: Note, i: number, item: Item, next: string): boolean {
  // "replaced 6 m", "ran 20 m": of wire or pipe
  if (laid.test(textAt(note.items, i - 1)) && isMetres(note, item)) return true;
  if (next !== "of") return false;
  // "line set's about 65 feet of 3/8", "it's got 65 feet of line": measured, whatever pipe it is
  const ofLine = /^line(?:s|set)?$/.test(textAt(note.items, i + 2)) && item.value > 3;
  const led = note.items.slice(Math.max(0, i - 3), i).map(({ label }) => label?.quantity);
  // "40 m of half inch": meters of pipe, no megohms
  const metres = isMetres(note, item);
  if (!metres && (item.unit?.dimension !== "length" || ofLine || led.includes("length")))
    return false;
  const [size, stroke, cores] = [note.items[i + 2], textAt(note.items, i + 3), note.items[i + 4]];
  if (freeNumber(size) && stroke === "/" && freeNumber(cores) && size.value <= 22)
    state(note, SIZE, [i + 2, i + 5], { kind: "note", about: "size" });
  else if (
    freeNumber(size) &&
    size.fraction &&
    (size.unit === undefined || size.unit.figure === "in")
  )
    state(note, SIZE, [i + 2, i + 3], { kind: "note", about: "size" });
  return true;
}
