import { type Item, itemKind } from "./item.ts";

const frozen =
  /^(?:iced|icing|ice|frosted|frosting|froze|frozen|solid|plugged|clear|clean|bare|dirty)$/;
const is = /^(?:is|was|all|still|half|completely|totally|mostly)$/;
/** Cases of one line-up at most; common practice, no source. */
const mostCases = 60;

/** "coil on 13 iced solid": the case whose coil it is, no air that enters it. */
export function coilOfCase(items: readonly Item[], plain: string): void {
  items.forEach((item, i) => {
    const number = items[i + 1];
    if (!/^coil (?:on|in)$/.test(plain.slice(item.from, item.to))) return;
    if (number?.kind !== itemKind.number || number.unit !== undefined) return;
    if (!Number.isInteger(number.value) || number.value < 1 || number.value > mostCases) return;
    let at = i + 2;
    while (is.test(items[at]?.text ?? "")) at++;
    if (!frozen.test(items[at]?.text ?? "")) return;
    item.label = undefined;
    item.kind = itemKind.word;
    number.kind = itemKind.subject;
    if (items.some(({ subject }) => /^case \d/.test(subject ?? "")))
      number.subject = `case ${number.value}`;
  });
}
