import { type Item, itemKind } from "../item.ts";
import { unitCalled } from "../kinds.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Pairs at least of a number and what it has, to be told as a row. */
const leastPairs = 3;

function isBare(item: Item | undefined): item is Item {
  return (
    item?.kind === itemKind.number && freeNumber(item) && item.unit === undefined && !item.colon
  );
}

/** How many pairs "1 46 2 46 3 0" begin at `from`, the first of each counting on from 1. */
function pairsAt(items: readonly Item[], from: number): number {
  let pairs = 0;
  for (let i = from; isBare(items[i]) && isBare(items[i + 1]); i += 2) {
    if (items[i]?.value !== pairs + 1) break;
    pairs++;
  }
  return pairs;
}

/** "eev coils 1 46 2 46 3 0 4 46": each coil by its number, and its ohms. */
export const coilsByNumber: Rule = {
  name: "coils <number> <ohms>, <number> <ohms>",
  heads: "coil|coils",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      const coils =
        /^(?:coil|coils)$/.test(item.text) || / coils?$/.test(note.plain.slice(item.from, item.to));
      if (!coils || item.kind === itemKind.number || textAt(items, i + 1) === "") return;
      const pairs = pairsAt(items, i + 1);
      if (pairs < leastPairs) return;
      item.kind = itemKind.label;
      item.label = { ...item.label, component: true };
      for (let pair = 0; pair < pairs; pair++) {
        const [name, value] = items.slice(i + 1 + pair * 2, i + 3 + pair * 2);
        if (name === undefined || value === undefined) continue;
        value.unit = unitCalled("ohm");
        state(note, coilsByNumber.name, [i + 1 + pair * 2, i + 2 + pair * 2], {
          kind: "note",
          about: "place",
        });
        name.kind = itemKind.label;
        name.label = { component: true };
        name.owner = undefined;
      }
    });
  },
};
