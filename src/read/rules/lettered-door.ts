import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";

/** The item as typed, where it is a number and one letter: "14A". */
function lettered(note: Note, item: Item): string | undefined {
  if (item.kind !== itemKind.number && item.kind !== itemKind.code) return undefined;
  const match = /^(\d{1,4})[a-hA-H]$/.exec(note.text.slice(item.from, item.to));
  return match?.[1];
}

/** "14B warm, 14A and 14C fine": one number under several letters names doors, whatever units the letters are. */
export const letteredDoors: Rule = {
  name: "<number><letter>, <number><letter>",
  needs: "number",
  apply: (note) => {
    const letters = new Map<string, Set<string>>();
    for (const item of note.items) {
      const digits = lettered(note, item);
      if (digits === undefined) continue;
      const seen = letters.get(digits) ?? new Set();
      seen.add(note.plain.charAt(item.to - 1));
      letters.set(digits, seen);
    }
    note.items.forEach((item, i) => {
      if (item.owner !== undefined) return;
      const digits = lettered(note, item);
      if (digits === undefined || (letters.get(digits)?.size ?? 0) < 2) return;
      state(note, letteredDoors.name, [i, i + 1], { kind: "note", about: "place" });
    });
  },
};
