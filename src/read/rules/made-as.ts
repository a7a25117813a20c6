import type { Dimension } from "../../quantities/quantity.ts";
import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

const made: ReadonlySet<Dimension> = new Set<Dimension>([
  "voltage",
  "current",
  "power",
  "apparent_power",
  "capacitance",
]);

/** What is made for volts and watts, and called by them. */
const thing =
  /^(?:motor|mtr|heater|element|fan|blower|coil|contactor|relay|transformer|xfmr|cap|capacitor|valve|solenoid|pump|unit|light|lamp|bulb)s?$/;

function ofMake(item: Item | undefined): boolean {
  return freeNumber(item) && item.unit !== undefined && made.has(item.unit.dimension);
}

/** Does the article at `i` tell what the thing before it is: "motor's a", "it's a", "heater is a"? */
function tellsWhat(items: readonly Item[], i: number): boolean {
  const before = items[i - 1];
  if (before === undefined) return false;
  if (before.apostrophe || /^(?:its|thats|theyre|those)$/.test(before.text)) return true;
  return /^(?:is|are|was)$/.test(before.text) && items[i - 2]?.label?.thing !== undefined;
}

/** "fan motor's a 120 volt 9 watt", "it's a 24 volt 40 VA transformer": what it is made for, nothing measured. */
export const madeAs: Rule = {
  name: "<thing> is a <volts> <watts>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!/^an?$/.test(item.text) || item.kind !== itemKind.word) return;
      if (!ofMake(items[i + 1]) || !tellsWhat(items, i)) return;
      let end = i + 1;
      while (ofMake(items[end])) end++;
      if (end - i < 3 && !thing.test(textAt(items, end))) return;
      state(note, madeAs.name, [i + 1, end], { kind: "note", about: "size" });
    });
  },
};
