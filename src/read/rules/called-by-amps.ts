import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";

/** "new fuse, 3,15 A, blew again": right behind the fuse, and parted from what follows. */
export function calledSo(items: readonly Item[], i: number): boolean {
  return /^fuses?$/.test(items[i - 2]?.text ?? "") && items[i + 1]?.text === ",";
}

/** "heat pump 460 volt inverter", "a 460 volt 3 phase heat pump": what it is built for, and nobody's meter. */
export function builtFor({ items, text }: Note, i: number): boolean {
  const [own, next, behind] = [items[i], items[i + 1], items[i + 2]];
  if (own === undefined || own.value < 100 || !/volt$/i.test(text.slice(own.from, own.to)))
    return false;
  const meter = /^(?:got|have|has|had|getting|reads?|reading|measured|seeing|at|only)$/;
  if (items.slice(Math.max(0, i - 3), i).some((word) => meter.test(word.text))) return false;
  const ends = behind === undefined || behind.kind === itemKind.sign || behind.text === "unit";
  if (/^(?:inverter|drive|vfd|heat)$/.test(next?.text ?? "")) return ends;
  return behind?.text === "phase" && /^(?:1|3|three|single)$/.test(next?.text ?? "");
}
