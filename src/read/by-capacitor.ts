import type { Draft } from "./draft.ts";
import { isGauges } from "./gauges-shape.ts";
import type { Item } from "./item.ts";
import { takeFor } from "./recast.ts";
import { isPair } from "./shape.ts";

/** A bare value so far over every capacitor told of, and as big as a motor's volts, is none of them: "motor gets 238, new 5 uF cap". Common practice, no source. */
const farOver = 4;
const leastVolts = 100;

/** In a message about capacitors a bare value is a capacitor's too. */
export function byCapacitor(list: readonly Draft[], items: readonly Item[]): void {
  const known = list.filter((draft) => draft.quantity !== undefined);
  if (known.length === 0 || !known.every((draft) => draft.quantity === "capacitance")) return;
  if (list.some((draft) => draft.stat !== undefined)) return;
  const most = Math.max(...known.map(({ value }) => value)) * farOver;
  for (const draft of list)
    if (
      draft.quantity === undefined &&
      draft.unit === undefined &&
      !isPair(draft) &&
      !isGauges(items, draft.index) &&
      draft.value > 0 &&
      draft.value < 400 &&
      !(draft.value >= leastVolts && draft.value > most)
    )
      draft.quantity = "capacitance";
  const [label, measured, ...more] = list.filter((draft) => draft.quantity === "capacitance");
  if (label !== undefined && measured !== undefined && more.length === 0)
    labelled(label, measured, items);
}

/** "cap says 5, meter says 3.6", "cap is a 40 and I get 33.6": the first stands on it, the second was measured. */
function labelled(label: Draft, measured: Draft, items: readonly Item[]): void {
  if (label.rating !== undefined || measured.rating !== undefined) return;
  const says = /^(?:says|said|is|a|its|reads)$/.test(items[label.index - 1]?.text ?? "");
  const meter = items
    .slice(label.index + 1, measured.index)
    .some(({ text }) =>
      /^(?:meter|get|got|getting|measures|measured|measuring|tested|tests)$/.test(text),
    );
  // "the start cap's 88 to 108 and tests 90"
  const range = !Number.isNaN(label.high) && Number.isNaN(measured.high);
  if ((says || range) && meter) label.rating = "nominal";
}

/** "6.1 A in the start wire, 402 across the run cap": what stands across it at work are volts. */
export function voltsOverCap(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (draft.ownUnit || draft.rating !== undefined || draft.value < leastVolts) continue;
    const [over, ...behind] = items.slice(draft.index + 1, draft.index + 4);
    if (!/^(?:across|over)$/.test(over?.text ?? "")) continue;
    const cap = behind.some(
      ({ text, label }) =>
        label?.quantity === "capacitance" || /^(?:cap|capacitor|can)$/.test(text),
    );
    if (!cap) continue;
    draft.place = undefined;
    takeFor(draft, "voltage", "V");
  }
}
