import { type Item, itemKind } from "./item.ts";

/** Compressors of one rack at most. Common practice, no source. */
const most = 16;

/** "megged three at 500 T1 410 T2 400": whose motor it was, by its number alone; its own ends follow behind the tester's volts. */
export function meggedByNumber(items: readonly Item[]): void {
  items.forEach((item, i) => {
    if (!/^(?:megged|meggered)$/.test(item.text)) return;
    const [name, at, volts, end] = items.slice(i + 1, i + 5);
    const small = name?.kind === itemKind.number && name.unit === undefined && !name.fraction;
    if (!small || !Number.isInteger(name.value) || name.value < 1 || name.value > most) return;
    if (!/^(?:at|@|with)$/.test(at?.text ?? "") || volts?.kind !== itemKind.number) return;
    const next = /^[,:]$/.test(end?.text ?? "") ? items[i + 5] : end;
    if (next?.kind !== itemKind.points || !/^[TUVW]/.test(next.points?.[0]?.[0] ?? "")) return;
    name.kind = itemKind.subject;
    name.subject = `compressor ${name.value}`;
  });
}
