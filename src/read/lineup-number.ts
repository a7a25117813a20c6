import { type Item, itemKind } from "./item.ts";

/** Line-ups of cases in one store at most; common practice, no source. */
const most = 24;
const through = /^(?:thru|through|to|-|and|&|,)$/;

/** "frozen solid on lineup two", "dairy lineup one is forty four": which row of cases it is, no figure of it. */
export function lineupNumber(items: readonly Item[]): void {
  items.forEach((item, i) => {
    const [before, number, next, after] = [items[i - 1], ...items.slice(i + 1, i + 4)];
    if (!/^(?:lineup|line-up)$/.test(item.text) || /^cases?$/.test(before?.text ?? "")) return;
    if (number?.kind !== itemKind.number || number.unit !== undefined || number.fraction) return;
    if (!Number.isInteger(number.value) || number.value < 1 || number.value > most) return;
    // "lineup 7 thru 10"
    if (through.test(next?.text ?? "") && after?.kind === itemKind.number) return;
    number.kind = itemKind.subject;
    number.subject = `lineup ${number.value}`;
  });
}
