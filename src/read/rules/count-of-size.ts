import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, isOrdinalUpTo, textAt } from "./near.ts";
import { SIZE } from "./size-words.ts";

/** So many of one part go into one job at most. Our choice, no source. */
const most = 24;
const caps = /^(?:cap|caps|capacitor|capacitors)$/;
const spent = /^(?:used|use|installed|fitted|ordered|need|grab)$/;
const read = /^(?:reads?|reading|at|measures?|measured|tests?|tested|got|now|is)$/;

const isSize = (item: Item | undefined): boolean =>
  item?.kind === itemKind.number && /size|breaker/.test(item.owner ?? "");

/** "one 7.5 cap used": microfarads that a capacitor is called by, where nothing was read. */
function isCalled(items: readonly Item[], at: number): boolean {
  return (
    freeNumber(items[at]) &&
    items[at]?.unit === undefined &&
    caps.test(textAt(items, at + 1)) &&
    items.some(({ text }) => spent.test(text)) &&
    !items.some(({ text }) => read.test(text))
  );
}

/** "1 A51 belt": a part by its number and its name. */
const isNumbered = (items: readonly Item[], at: number): boolean =>
  items[at]?.kind === itemKind.code && /^[a-z]{3,}$/.test(textAt(items, at + 1));

/** "put one in": one of them, and no amount. */
const isOneOfThem = (items: readonly Item[], at: number): boolean =>
  textAt(items, at) === "one" &&
  /^(?:put|stuck|threw|popped|dropped)$/.test(textAt(items, at - 1)) &&
  textAt(items, at + 1) === "in";

/** "used two 45/5 caps", "one 7.5 cap used": how many, and by what size they are called. */
export const countOfSizes: Rule = {
  name: "<count> <size of a thing>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      // "25/370 cap": its microfarads and its volts
      const from = textAt(items, i - 1) === "/" && freeNumber(items[i - 2]) ? i - 2 : i;
      if (isCalled(items, i)) state(note, SIZE, [from, i + 2], { kind: "note", about: "size" });
      if (!isOrdinalUpTo(item, most)) return;
      const sized = isSize(items[i + 1]) || isCalled(items, i + 1);
      if (!sized && !isNumbered(items, i + 1) && !isOneOfThem(items, i)) return;
      state(note, countOfSizes.name, [i, i + 1], { kind: "note", about: "count" });
    });
  },
};
