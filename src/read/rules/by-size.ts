import { itemKind } from "../item.ts";
import type { Note } from "../note.ts";

/** "need ten feet of three quarter": a length of a size, kept as said. */
export function pipeAt(note: Note, from: number, to: number): string | undefined {
  const { items } = note;
  const [length, of, size] = items.slice(from + 1, from + 4);
  const last = items[to - 1];
  const feet = length?.kind === itemKind.number && length.unit?.dimension === "length";
  if (!feet || of?.text !== "of" || size?.kind !== itemKind.number || last === undefined)
    return undefined;
  return note.text.slice(length.from, last.to).trim();
}

/** "putting a new 40/5 in": two microfarads, as a dual capacitor is called; index of the first, or -1. */
export function capacitorAt({ items }: Note, from: number, to: number): number {
  return items.findIndex((item, i) => {
    const fan = items[i + 2];
    const dual = i > from && i + 2 < to && items[i + 1]?.text === "/";
    if (!dual || item.kind !== itemKind.number || fan?.kind !== itemKind.number) return false;
    return item.value >= 15 && item.value <= 100 && fan.value >= 1.5 && fan.value <= 15;
  });
}
