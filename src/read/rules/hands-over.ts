import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";

const holds =
  /\b(?:(?:has|got|takes|have|keeps|finishes|'s got|is on|stays on|'s on|is taking|is staying on|'s staying on|'s taking|is finishing|'s finishing) (it|this|that|this one|that one|over)|all (yours)|over to (you)|you(?:'ve got| got| have) (it|this))\b/;

/** A name, or "you", who goes on: no gauge and no part has it. */
function isPerson({ items }: Note, at: number): boolean {
  const before = items.slice(Math.max(0, at - 4), at);
  return !before.some(
    (item) =>
      item.label !== undefined || item.kind === itemKind.number || item.kind === itemKind.subject,
  );
}

/**
 * "I'm off to the school, Ife has it": who goes on to the next job has left this one to another in
 * the same breath; index of the word that says so, or -1.
 */
export function handsOver(note: Note): number {
  const found = holds.exec(note.plain);
  if (found === null || note.holds.mark) return -1;
  const word = found.slice(1).find((one) => one !== undefined) ?? "";
  const from = found.index + found[0].lastIndexOf(word);
  const at = note.items.findIndex((item) => item.from === from);
  return at >= 0 && note.items[at]?.owner === undefined && isPerson(note, at) ? at : -1;
}

const asks =
  /^(?:(?:so|and|ok|okay|hey) )*(?:what(?:'?s| is| was| are| were| did| does| do)|who(?:'?s| is| has| did)|whose|which(?: [a-z]+){1,2} (?:is|are|was|were|do|does|did|has|have|need|needs)|how (?:many|much|long)|am i|are we|can i|may i|did i|did we)\b/;

/** Where the question ends that a message begins with, mark or not: nobody tells of himself in it. */
export function askedUpTo(note: Note): number {
  if (!asks.test(note.plain.trimStart())) return 0;
  const end = note.items.findIndex((item: Item) => /^[.?!,;]$/.test(item.text));
  return end < 0 ? note.items.length : end;
}
