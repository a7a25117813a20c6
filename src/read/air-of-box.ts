import { type Item, itemKind, wordsFrom } from "./item.ts";
import { role } from "./word.ts";

/** "air out of the head 101": an indoor head blows air, no gauge of a compressor is meant. */
function airOfHead(items: readonly Item[]): void {
  items.forEach((head, at) => {
    if (head.text !== "head" || head.label?.hint !== "pressure") return;
    const ahead = wordsFrom(items, at - 4, at);
    if (!/\bair(?: (?:out|in|off|on|of|to|at|the|that))*$/.test(ahead)) return;
    head.kind = itemKind.word;
    head.label = undefined;
  });
}

/** "product 36 and the air's 34": beside the product the air is the box's. */
export function airOfBox(items: readonly Item[]): void {
  airOfHead(items);
  if (!items.some(({ label }) => label?.place === "product")) return;
  items.forEach((item, at) => {
    if (item.text !== "air" || item.label !== undefined || item.kind !== itemKind.word) return;
    const is = ((items[at + 1]?.roles ?? 0) & role.is) !== 0 || items[at + 1]?.text === "at";
    const figure = items[is ? at + 2 : at + 1];
    const { unit, kind } = figure ?? {};
    if (kind !== itemKind.number || (unit !== undefined && unit.dimension !== "temperature"))
      return;
    item.kind = itemKind.label;
    item.label = { place: "box", hint: "temperature" };
  });
}
