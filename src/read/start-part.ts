import { type Item, itemKind } from "./item.ts";

const parts = /^(?:windings?|lead|leads|wire|wires|leg|terminal|pin|relay|side|coil|post)$/;

const notYet = /^(?:before|pre|until|prior)$/;

/** "2.9 A in the start winding lead", "before start: T1-T2 2.31": which winding it is, or a time ahead of it, no moment of starting. */
export function startPart(items: readonly Item[]): void {
  items.forEach((item, i) => {
    if (item.label?.state !== "start") return;
    const part = item.text === "start" && parts.test(items[i + 1]?.text ?? "");
    const before = items[i - 1]?.text === "to" ? i - 2 : i - 1;
    if (!part && !notYet.test(items[before]?.text ?? "")) return;
    item.kind = itemKind.word;
    item.label = undefined;
  });
}
