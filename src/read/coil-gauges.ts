import type { Draft } from "./draft.ts";
import { type Item, isOneWord } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const evapWord = /^(?:evap|evaporator|evaporating)$/;
const condWord = /^(?:cond|condenser|condensing)$/;
const ofWater =
  /^(?:approach|water|wtr|gpm|dp|drop|ent|lvg|entering|leaving|pump|flow|in|out|inlet|outlet)$/;
/** A condenser holds so many times what the evaporator does, where the machine runs. Our choice, no source. */
const lift = 1.8;

function named(draft: Draft, items: readonly Item[], words: RegExp): boolean {
  const small = /^(?:is|was|at|@|:|now)$/.test(items[draft.index - 1]?.text ?? "");
  const word = items[draft.index - (small ? 2 : 1)];
  return word !== undefined && words.test(word.text) && isOneWord(word);
}

const isFree = ({ named: told, points, rating, action, over }: Draft): boolean =>
  [told, points, rating, action].every((one) => one === undefined) && !over;

/** "evap 32 psi cond 122", "evap 37.5 lb cond 124": what both vessels of a chiller hold, one of the two with its unit. */
export function coilGauges(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((evap, order) => {
    const cond = drafts[order + 1];
    if (cond === undefined || !named(evap, items, evapWord) || !named(cond, items, condWord))
      return;
    const pair = [evap, cond];
    if (!pair.every(isFree) || cond.value < lift * evap.value) return;
    if (
      items
        .slice(Math.max(0, evap.index - 4), cond.index + 3)
        .some(({ text }) => ofWater.test(text))
    )
      return;
    const pressed = pair.find(
      ({ unit }) => unit?.dimension === "pressure" || unit?.figure === "lb",
    );
    const unit = pressed?.unit?.figure === "lb" ? unitCalled("psi") : pressed?.unit;
    const alike = pair.every((one) => one.unit === undefined || one.unit === pressed?.unit);
    if (unit === undefined || !alike) return;
    for (const draft of pair) {
      if (draft.unit === undefined) draft.assumedUnit = true;
      draft.unit = unit;
      draft.named = "pressure";
      draft.place = draft === evap ? "suction" : "discharge";
      draft.hint = undefined;
      draft.component = false;
      draft.subject = draft.subject?.replace(/^(?:evaporator|condenser) .*$/, "") || undefined;
    }
  });
}
