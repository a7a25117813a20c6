import type { Item } from "../item.ts";
import { type Note, state } from "../note.ts";
import { isTare, isWaterCapacity } from "../tank-fill.ts";
import { textAt } from "./near.ts";
import { SIZE } from "./size-words.ts";

/** How much a thing is made to hold: a cylinder by its water, a plate's charge by its feet of line. */
export function heldSize(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  const told = [textAt(items, i - 2), textAt(items, i - 1)].join(" ");
  // "plate covers 25 ft", "charged for 7.5 m"
  if (item.unit?.dimension === "length" && /(?:^| )cover(?:s|ed)?$|charged for$/.test(told)) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "length" });
    return true;
  }
  if (isTare(items, i)) {
    state(note, SIZE, [i - 1, i + 1], { kind: "note", about: "size" });
    return true;
  }
  if (!isWaterCapacity(items, i, note.plain)) return false;
  const from = item.unit?.dimension === "inches_of_water" ? i : i - 1;
  state(note, SIZE, [from, i + 1], { kind: "note", about: "size" });
  return true;
}
