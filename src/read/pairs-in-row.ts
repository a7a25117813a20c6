import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { copyKind } from "./like-others.ts";
import { between } from "./relate.ts";
import { family, isPair } from "./shape.ts";

const isOhmWord = ({ text }: Item): boolean =>
  /^(?:ohms?|ohmed|windings?|megs?|megged)$/.test(text);

function follows(items: readonly Item[], left: Draft, right: Draft): boolean {
  return isPair(right) && family(right) === family(left) && !between(items, left, right).strong;
}

/**
 * "volts T1-T2 475, T2-T3 38, T1-T3 41": pairs of lines in one row are measured alike, so a pair that
 * lost its voltage is not a winding's ohms.
 */
export function pairsInRow(list: readonly Draft[], items: readonly Item[]): void {
  for (let at = 0; at < list.length; ) {
    const row: Draft[] = [];
    for (let one = list[at]; one !== undefined; one = list[at + row.length]) {
      const last = row.at(-1);
      if (!isPair(one) || (last !== undefined && !follows(items, last, one))) break;
      row.push(one);
    }
    at += Math.max(1, row.length);
    const source = row.find(({ quantity }) => quantity === "voltage");
    if (source === undefined || row.length < 2 || items.some(isOhms)) continue;
    for (const draft of row)
      if (draft.quantity === undefined && draft.unit === undefined && !draft.over)
        copyKind(source, draft);
  }
}

function isOhms(item: Item): boolean {
  return item.kind === itemKind.number ? item.unit?.dimension === "resistance" : isOhmWord(item);
}
