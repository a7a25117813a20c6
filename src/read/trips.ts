import type { Draft } from "./draft.ts";
import { sameDimension } from "./inherit.ts";
import type { Item } from "./item.ts";

/** What the word right before a figure makes of it: where it trips, or what it should be at most. */
function meant(
  items: readonly Item[],
  left: Draft,
  draft: Draft,
): "setpoint" | "expected" | undefined {
  const is = /^(?:is|of|:|=)$/.test(items[draft.index - 1]?.text ?? "");
  const at = draft.index - (is ? 2 : 1);
  const [joint, word] = [items[at - 1], items[at]];
  if (joint?.text !== "," && joint !== items[left.index]) return undefined;
  if (/^(?:trip|trips)$/.test(word?.text ?? "")) return "setpoint";
  // "dp 4 psi, max 3": no peak is less than what was read
  if (/^(?:max|maximum|limit)$/.test(word?.text ?? "") && draft.value < left.value)
    return "expected";
  // "filter dp .5 max .8"
  const air = left.named === "static_pressure" || left.unit?.dimension === "inches_of_water";
  return /^(?:max|maximum|limit)$/.test(word?.text ?? "") && air ? "expected" : undefined;
}

/** "oil diff 19 psi, trip 9", "filter dp .5 max .8": behind a value of its kind stands what bounds it. */
export function trips(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  list.forEach((draft, order) => {
    const left = list[order - 1];
    if (left === undefined || draft.rating !== undefined || draft.points !== undefined) return;
    if (left.named === undefined && left.unit === undefined && left.hint === undefined) return;
    if (draft.sentence !== left.sentence || !sameDimension(left, draft)) return;
    const rating = meant(items, left, draft);
    if (rating === undefined) return;
    draft.rating = rating;
    draft.stat = undefined;
    draft.named = left.named;
    draft.hint = left.hint;
    if (draft.unit === undefined) draft.unit = left.unit;
    draft.subject ??= left.subject;
  });
}

/** "compressor B trips at 28 amps": what a machine drew when it tripped, where no switch or relay is set so. */
export function drewAtTrip(drafts: readonly Draft[], items: readonly Item[]): void {
  if (items.some(({ text }) => /^(?:set|setting|dial|dialed|adjusted|relay)$/.test(text))) return;
  for (const draft of drafts) {
    if (draft.rating !== "setpoint") continue;
    const led = items.slice(Math.max(0, draft.index - 3), draft.index);
    // "drive trips at 31 hz": how fast it ran then
    if (draft.unit?.dimension === "frequency" && led.some(({ text }) => /^trips?$/.test(text)))
      draft.rating = undefined;
    if (draft.unit?.dimension !== "current") continue;
    const machine = led.some(
      ({ label, subject }) =>
        label?.thing === "compressor" || /^(?:compressor|fan|motor|pump)\b/.test(subject ?? ""),
    );
    if (machine && led.some(({ text }) => /^trips?$/.test(text))) draft.rating = undefined;
  }
}
