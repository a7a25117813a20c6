import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, LIST, textAt } from "./near.ts";

/** What closes a numeral: "2)" anywhere, "2." only where the list began a line or behind a colon. */
function closes(items: readonly Item[], i: number): boolean {
  const sign = items[i + 1];
  if (sign?.glued !== true || sign.kind !== itemKind.sign) return false;
  return sign.text === ")" || sign.text === ".";
}

function begins(items: readonly Item[], i: number): boolean {
  const before = items[i - 1];
  return (
    before === undefined ||
    before.kind === itemKind.line ||
    /^[:(,.-]$/.test(before.text) ||
    textAt(items, i + 1) === ")"
  );
}

/** "needed: 1) contactor 2) fan cap": numerals that count up from one and measure nothing. */
export const listNumerals: Rule = {
  name: LIST,
  needs: "number",
  apply: (note) => {
    const { items } = note;
    const found: number[] = [];
    let sign = "";
    items.forEach((item, i) => {
      if (!freeNumber(item) || item.unit !== undefined || !closes(items, i)) return;
      if (item.value !== found.length + 1 || item.spoken) return;
      if (found.length === 0 && !begins(items, i)) return;
      if (found.length > 0 && textAt(items, i + 1) !== sign) return;
      sign = textAt(items, i + 1);
      found.push(i);
    });
    if (found.length < 2) return;
    for (const i of found) {
      const open = textAt(items, i - 1) === "(" ? i - 1 : i;
      state(note, listNumerals.name, [open, i + 2], { kind: "note", about: "count" });
    }
  },
};
