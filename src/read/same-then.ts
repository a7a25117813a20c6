import { type Item, itemKind } from "./item.ts";

/** A machine that is measured as another one was, by its noun or by its tag. */
const machine =
  /^(?:(?:compressor|circuit|system|stage|unit|fan|pump|head|heater|motor|rtu|odu|idu|ahu)\b|[a-z]{1,4}-?\d+$)/i;

/** "same on comp 2: 340k, 290k, 410k": the same test, and its own figures; nothing is copied. */
export function sameThen(items: Item[]): void {
  for (let at = items.length - 3; at >= 0; at--) {
    if (items[at]?.text !== "same") continue;
    let to = at + 1;
    if (/^(?:test|thing)$/.test(items[to]?.text ?? "")) to++;
    if (!/^(?:on|for|with|w|at)$/.test(items[to]?.text ?? "")) continue;
    const named = items[to + 1];
    if (named?.kind !== itemKind.subject || !machine.test(named.subject ?? "")) continue;
    const joint = items[to + 2];
    const figure = /^(?:[:,=-]|is|are|reads)$/.test(joint?.text ?? "") ? items[to + 3] : joint;
    if (figure?.kind === itemKind.number) items.splice(at, to - at);
  }
}
