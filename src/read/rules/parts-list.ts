import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { isOrdinalUpTo, textAt } from "./near.ts";

const heading =
  /^(?:parts?|materials?|needs?|needed|to order|order|bring|shopping)(?: list| needed)?(?: (?:for|on|by|to) [\w -]{1,24})?:$/;

/** Things of one kind on one list at most; our choice, no source. */
const mostOfOne = 99;

/** Index of the first item of the line that begins at or behind `from`, and of the item behind it. */
function lineAt(items: readonly Item[], from: number): readonly [first: number, end: number] {
  let first = from;
  while (items[first]?.kind === itemKind.line) first++;
  let end = first;
  while (end < items.length && items[end]?.kind !== itemKind.line) end++;
  return [first, end];
}

/** "2 - 5/8 driers": the line's count, and where the thing's name begins; nothing where it is no such line. */
function thingAt(items: readonly Item[], first: number, end: number): number {
  const bullet = /^[-*•]$/.test(textAt(items, first));
  const open = textAt(items, first) === "(" ? 1 : 0;
  let at = first + (bullet ? 1 : open);
  if (isOrdinalUpTo(items[at], mostOfOne)) at++;
  else if (!bullet) return -1;
  while (/^(?:[-x)×]|ea|each)$/.test(textAt(items, at)) && at < end) at++;
  const named = items
    .slice(at, end)
    .some(({ kind }) => kind === itemKind.word || kind === itemKind.label);
  return named && items[at]?.kind !== itemKind.line ? at : -1;
}

function takeLine(note: Note, first: number, end: number): boolean {
  const { items, plain } = note;
  const thing = thingAt(items, first, end);
  const [name, last] = [items[thing], items[end - 1]];
  if (name === undefined || last === undefined) return false;
  const count = items.slice(first, thing).find(({ kind }) => kind === itemKind.number);
  const part = plain.slice(name.from, last.to).trim();
  const quantity = count === undefined ? {} : { quantity: count.value };
  state(note, partsLists.name, [first, end], { kind: "part", part, ...quantity, state: "needed" });
  return true;
}

/** "Parts for Friday:", and then a line for each thing with its count: nothing of it was measured. */
export const partsLists: Rule = {
  name: "parts: <count> <thing>, a line each",
  heads: "part|parts|material|materials|need|needs|needed|order|bring|shopping",
  needs: "number",
  apply: (note) => {
    const { items, plain } = note;
    for (let from = 0; from < items.length; ) {
      const [first, end] = lineAt(items, from);
      const [head, last] = [items[first], items[end - 1]];
      from = Math.max(end, from + 1);
      if (head === undefined || last === undefined) continue;
      if (!heading.test(plain.slice(head.from, last.to).trim())) continue;
      for (;;) {
        const [line, stop] = lineAt(items, from);
        if (line >= items.length || !takeLine(note, line, stop)) break;
        from = stop;
      }
    }
  },
};
