import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { between } from "./relate.ts";

/** Legs of one motor, and how far apart they may be as a factor. Common practice, no source. */
const legs = { least: 3, apart: 1.5 } as const;

/** "pulled 30 30 31 on the legs": nobody weighs three times over; three figures alike are what it drew. */
export function legsPulled(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((first, order) => {
    // "contactor pulled in, top 209 208 209" is no motor
    if (items[first.index - 1]?.text !== "pulled") return;
    if (first.action !== "recovered" || !isBare(first)) return;
    const row = [first];
    for (let at = order + 1; at < drafts.length; at++) {
      const [left, right] = [drafts[at - 1], drafts[at]];
      if (left === undefined || right === undefined || !isBare(right)) break;
      const gap = between(items, left, right);
      if (!gap.list && !gap.empty) break;
      row.push(right);
    }
    const values = row.map(({ value }) => value);
    if (row.length !== legs.least || Math.max(...values) > legs.apart * Math.min(...values)) return;
    for (const draft of row) {
      draft.action = undefined;
      draft.named = "current";
      draft.hint = undefined;
    }
  });
}

function isBare({ unit, named, place, rating, gone }: Draft): boolean {
  return !gone && unit === undefined && named === undefined && !place && rating === undefined;
}
