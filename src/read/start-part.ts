import { type Item, itemKind } from "./item.ts";

const parts = /^(?:windings?|lead|leads|wire|wires|leg|terminal|pin|relay|side|coil|post)$/;

/** "2.9 A in the start winding lead": which winding it is, no moment of starting. */
export function startPart(items: readonly Item[]): void {
  items.forEach((item, i) => {
    if (item.text !== "start" || item.label?.state !== "start") return;
    if (!parts.test(items[i + 1]?.text ?? "")) return;
    item.kind = itemKind.word;
    item.label = undefined;
  });
}
