import type { Draft } from "./draft.ts";
import { type Item, isOneWord, itemKind } from "./item.ts";

/** Degrees at least between where a machine evaporates and condenses, in either scale; common practice, no source. */
const lift = 25;
/** Degrees at most of either scale that such a figure may be; more is a pressure. */
const warmest = 75;

/** The coil's name and nothing more: "evap", no "evap in". */
function bare(item: Item | undefined, words: RegExp): boolean {
  if (item === undefined || item.kind === itemKind.number) return false;
  return words.test(item.text) && isOneWord(item);
}

const ofWater = /^(?:approach|water|wtr|gpm|ent|lvg|entering|leaving)$/;

/** "evap -31 cond 38", "evap -12°C, cond 41°C": both saturations by the coils' names, where no water and no air is told. */
export function evapCond(list: readonly Draft[], items: readonly Item[]): void {
  const named = (draft: Draft, words: RegExp): boolean =>
    (draft.unit === undefined || draft.unit.figure === "C") &&
    draft.named === undefined &&
    draft.points === undefined &&
    bare(items[draft.index - 1], words);
  list.forEach((evap, order) => {
    if (!named(evap, /^(?:evap|evaporator|evaporating)$/)) return;
    const cond = list[order + 1];
    if (cond === undefined || !named(cond, /^(?:cond|condenser|condensing)$/)) return;
    if (cond.value - evap.value < lift || evap.value > warmest || cond.value > 2 * warmest) return;
    const near = items.slice(Math.max(0, evap.index - 4), cond.index + 3);
    if (near.some(({ text }) => ofWater.test(text))) return;
    for (const draft of [evap, cond]) {
      draft.named = "temperature";
      draft.place = draft === evap ? "suction_saturation" : "discharge_saturation";
      draft.hint = undefined;
      draft.component = false;
      draft.subject = draft.subject?.replace(/^(?:evaporator|condenser) .*$/, "") || undefined;
    }
  });
}
