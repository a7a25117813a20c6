import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber } from "./near.ts";

/** Is the number the name of a row: "1:" and a value behind it? */
function namesRow(items: readonly Item[], i: number, wanted: number): boolean {
  const item = items[i];
  if (!freeNumber(item) || item.unit !== undefined || item.value !== wanted) return false;
  if (items[i + 1]?.text !== ":" || items[i + 1]?.glued !== true) return false;
  const value = items[i + 2];
  return value?.kind === itemKind.over || (freeNumber(value) && value.glued === false);
}

/** What the rows are rows of: the machines or the leads that were named in the plural. */
function nounOf(items: readonly Item[], plain: string): string {
  for (const item of items) {
    const match = /\b(comp|compressor|fan|circuit|ckt|unit|motor|pump)s$/.exec(
      plain.slice(item.from, item.to),
    );
    if (match === null) continue;
    if (match[1] === "comp") return "compressor ";
    return match[1] === "ckt" ? "circuit " : `${match[1]} `;
  }
  return "";
}

/** "both comps, 1: 640 655 648 M. 2: 1.9 2.1 2.0 M": each row behind the number of its machine. */
export const colonRows: Rule = {
  name: "<number>: <values>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    const rows: number[] = [];
    items.forEach((_, i) => {
      if (namesRow(items, i, rows.length + 1)) rows.push(i);
    });
    // leads by number are rows of one value each, which are read as they stand
    const many = rows.some(
      (at) => items[at + 3]?.kind === itemKind.number || items[at + 3]?.text === "/",
    );
    const noun = nounOf(items, note.plain);
    if (rows.length < 2 || !many || items.some((item) => item.kind === itemKind.points)) return;
    for (const at of rows) {
      const item = items[at];
      if (item === undefined) continue;
      state(note, colonRows.name, [at, at + 1], { kind: "note", about: "place" });
      if (noun === "") continue;
      item.kind = itemKind.subject;
      item.subject = `${noun}${item.value}`;
      item.owner = undefined;
    }
    // "both comps, 1: …": how many rows there are, no count of a value
    const first = rows[0] ?? 0;
    if (noun !== "")
      items.slice(0, first).forEach((item) => {
        item.roles &= ~role.all;
      });
  },
};
