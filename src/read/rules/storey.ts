import type { Item } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Storeys of a building at most; common practice, no source. */
const STOREYS = 60;

const leads = /^(?:on|from|to|up|down|off|@|,)$/;
/** What has a level of its own: "oil on level 2" is no storey. */
const filled = /^(?:oil|glass|water|liquid|sight|refrigerant|tank|float|sound|noise)$/;

/** "key with security on level 2", "up on the level 3": which storey it is. */
function isStorey(items: readonly Item[], i: number): boolean {
  const number = items[i + 1];
  if (!/^(?:level|lvl|fl|flr)$/.test(textAt(items, i)) || !freeNumber(number)) return false;
  if (number.unit !== undefined || number.fraction || !/^\d+$/.test(number.text)) return false;
  if (number.value < 1 || number.value > STOREYS) return false;
  const the = textAt(items, i - 1) === "the";
  if (i > 0 && !leads.test(textAt(items, the ? i - 2 : i - 1))) return false;
  return !items.some(({ text }) => filled.test(text));
}

/** A storey by its number, no degrees of the room that stands on it. */
export const storeys: Rule = {
  name: "on level <number>",
  heads: "level|lvl|fl|flr",
  needs: "number",
  apply: (note) => {
    note.items.forEach((_, i) => {
      if (isStorey(note.items, i))
        state(note, storeys.name, [i, i + 2], { kind: "note", about: "place" });
    });
  },
};
