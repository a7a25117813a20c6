import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

const street = /^(?:st|street|ave|avenue|rd|road|blvd|dr|drive|ln|lane|hwy|pkwy|ct|way|pl)$/;
const leads = /^(?:to|at|address|ship|deliver|@|:)$/;

/** The street's word behind a house number, over a few names and directions; -1 where there is none. */
function streetBehind(items: readonly Item[], i: number): number {
  for (let at = i + 1; at <= i + 4; at++) {
    const item = items[at];
    if (item === undefined || item.kind === itemKind.sign || item.unit !== undefined) return -1;
    if (item.kind === itemKind.points) return -1;
    if (street.test(item.text) && at > i + 1) return at;
  }
  return -1;
}

/** "ship to 4410 w 9th st", "im at 1220 main ave" */
export const streetAddresses: Rule = {
  name: "<number> <street>",
  heads: "st|street|ave|avenue|rd|road|blvd|dr|ln|lane|hwy|pkwy|ct|pl",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item) || item.spoken || !Number.isInteger(item.value) || item.value < 10)
        return;
      if (i > 0 && !leads.test(textAt(items, i - 1))) return;
      const end = streetBehind(items, i);
      if (end > 0)
        state(note, streetAddresses.name, [i, end + 1], { kind: "note", about: "place" });
    });
  },
};
