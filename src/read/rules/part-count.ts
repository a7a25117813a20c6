import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";

/** So many of one part at most; our choice, no source. */
const mostOfOne = 60;

/** A count of things, whatever plan it stands in. */
export function countAt(item: Item | undefined): number | undefined {
  if (item?.kind !== itemKind.number || item.unit !== undefined) return undefined;
  if (!Number.isInteger(item.value) || item.value < 1 || item.value > mostOfOne) return undefined;
  const free = item.owner === undefined || /^(?:<number> <things>|going to)/.test(item.owner);
  return free ? item.value : undefined;
}

/** How many of the part at `at` were said: "2 belts", "qty 3". */
export function countOf(note: Note, at: number): number | undefined {
  const { items } = note;
  for (let i = Math.max(0, at - 3); i < Math.min(items.length, at + 6); i++) {
    const count = countAt(items[i]);
    if (count === undefined) continue;
    // "10/440 cap": its size
    if (items[i + 1]?.text === "/" || items[i - 1]?.text === "/") continue;
    const next = items[i + 1]?.text;
    // "it's eighteen after the filter change": a value, no count
    const told = items
      .slice(i + 1, at)
      .some(({ text }) => /^(?:after|before|since|with|when|the|on|at)$/.test(text));
    if (i < at && told) continue;
    if (i < at || next === "of" || items[i - 1]?.text === "qty") return count;
  }
  return undefined;
}
