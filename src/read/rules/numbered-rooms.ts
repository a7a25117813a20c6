import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber } from "./near.ts";

/** A room's number: three or four figures, no unit, no point. */
function room(item: Item | undefined): boolean {
  return (
    freeNumber(item) &&
    item.unit === undefined &&
    Number.isInteger(item.value) &&
    item.value >= 100 &&
    item.value <= 9999 &&
    !item.text.includes(".")
  );
}

function degrees(item: Item | undefined): boolean {
  return freeNumber(item) && item.unit?.dimension === "temperature";
}

/** "204 77F, 206 78F, 208 71F": rooms by their numbers alone, each with its degrees. */
export const numberedRooms: Rule = {
  name: "<room number> <degrees>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    const starts = items.flatMap((item, i) => {
      const before = items[i - 1];
      const begins =
        before === undefined ||
        before.kind === itemKind.line ||
        before.kind === itemKind.sign ||
        before.text === "and" ||
        before.label?.hint === "temperature" ||
        degrees(before);
      return begins && room(item) && degrees(items[i + 1]) ? [i] : [];
    });
    if (starts.length < 2) return;
    for (const i of starts) {
      state(note, numberedRooms.name, [i, i + 1], { kind: "note", about: "place" });
    }
  },
};
