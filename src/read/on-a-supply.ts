import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { isSupply } from "./meg-again.ts";
import { takeFor } from "./recast.ts";

/** V, what a supply is called by; and how far from it its lines may be told. Common practice, no source. */
const callV = { from: 100, to: 620 } as const;
const farthest = 0.3;
const sizes = "<number> <size of a thing>";

/** "179 178 180 on a 208 unit": figures of the size of the supply that is named beside them. */
export function onASupply(list: readonly Draft[], items: readonly Item[]): void {
  const supply = items.find(
    ({ kind, owner, value }) =>
      kind === itemKind.number && owner === sizes && value >= callV.from && value <= callV.to,
  );
  if (supply === undefined) return;
  const lines = list.filter(
    (draft) =>
      draft.unit === undefined &&
      draft.named === undefined &&
      draft.rating === undefined &&
      draft.action === undefined &&
      Math.abs(draft.value / supply.value - 1) <= farthest,
  );
  if (lines.length < 2 || list.some(({ unit }) => unit?.dimension === "pressure")) return;
  for (const draft of lines) asVolts(draft);
}

const asVolts = (draft: Draft): void => takeFor(draft, "voltage", "V");

const isBare = ({ unit, rating, action, points }: Draft): boolean =>
  unit === undefined && rating === undefined && action === undefined && points === undefined;

/** Share by which three lines of one supply lie apart at most to be told by it alone. Common practice, no source. */
const alike = 0.03;

/** "high side has 462 463 461, xfmr primary 461": three lines of a supply beside a transformer's, no gauges. */
export function linesOfSide(list: readonly Draft[], items: readonly Item[]): void {
  const volts = items.some(({ label }) => (label?.hint ?? label?.quantity) === "voltage");
  if (!volts) return;
  list.forEach((first, order) => {
    const row = list.slice(order, order + 3);
    const highest = Math.max(...row.map(({ value }) => value));
    const lowest = Math.min(...row.map(({ value }) => value));
    const close = row.length === 3 && highest - lowest <= alike * highest;
    if (first.place !== "discharge" || !close) return;
    if (!row.every((one) => isBare(one) && isSupply(one.value))) return;
    for (const draft of row) {
      asVolts(draft);
      draft.place = undefined;
    }
  });
}

/** "208 at the heater terminals": what stands there are volts, whatever the element is measured in. */
export function voltsAtTerminals(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (!isBare(draft) || !isSupply(draft.value)) continue;
    if (draft.named !== undefined && draft.named !== "resistance") continue;
    const behind = items.slice(draft.index + 1, draft.index + 5);
    const at = behind.findIndex(({ text }) => /^(?:terminals|terminal|lugs)$/.test(text));
    if (at < 1 || !/^(?:at|across|on)\b/.test(behind[0]?.text ?? "")) continue;
    if (behind.slice(0, at).some(({ kind }) => kind === itemKind.sign)) continue;
    asVolts(draft);
  }
}
