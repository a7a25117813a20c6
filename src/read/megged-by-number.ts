import { type Item, itemKind } from "./item.ts";

/** Compressors of one rack at most. Common practice, no source. */
const most = 16;

const machine = /^(?:comp|compressor|cmp|motor|fan|pump|blower)$/;
const tester = /^\d{1,2} ?(?:megs?|meggers?|megohms?|megohm test|meg test)$/;

/**
 * "comp 1 meg at 1000 V: 1 min 310": the test of that compressor is announced with its volts, and its values follow;
 * no megohm of its own stands there.
 */
function testAnnounced(items: readonly Item[], i: number, plain: string): void {
  const [name, number, at, volts] = items.slice(i, i + 4);
  if (!machine.test(name?.text ?? "") || number?.kind !== itemKind.number) return;
  if (!tester.test(plain.slice(number.from, number.to)) || number.value > most) return;
  const tested = volts?.kind === itemKind.number && [250, 500, 1000].includes(volts.value);
  if (!/^(?:at|@|with)$/.test(at?.text ?? "") || !tested) return;
  const values = items
    .slice(i + 4)
    .filter(({ kind, unit }) => kind === itemKind.number && unit?.dimension !== "time");
  if (values.length === 0) return;
  number.kind = itemKind.subject;
  number.unit = undefined;
  const kind = name?.text.startsWith("c") === true ? "compressor" : (name?.text ?? "");
  number.subject = `${kind} ${number.value}`;
  number.label = { quantity: "insulation_resistance" };
}

/** "megged three at 500 T1 410 T2 400": whose motor it was, by its number alone; its own ends follow behind the tester's volts. */
export function meggedByNumber(items: readonly Item[], plain: string): void {
  items.forEach((item, i) => {
    testAnnounced(items, i, plain);
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
