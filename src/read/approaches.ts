import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const ends = /^(?:evap|evaporator|evp|cond|condenser|cnd|chiller|clr)$/;

/** "approach evap 2.1 cond 4.8": the word holds for each end of the machine that is named behind it. */
export function approaches(items: readonly Item[], drafts: readonly Draft[]): void {
  short(items, drafts);
  ofCondenser(drafts);
  const word = items.findIndex(({ text }) => /^(?:approach|approaches)$/.test(text));
  if (word < 0) return;
  const line = items.findIndex(({ kind }, i) => i > word && kind === itemKind.line);
  for (const draft of drafts) {
    if (draft.index < word || (line >= 0 && draft.index > line)) continue;
    if (draft.named !== undefined || draft.hint !== undefined) continue;
    if (draft.unit !== undefined && draft.unit.dimension !== "temperature") continue;
    if (!ends.test(items[draft.index - 1]?.text ?? "")) continue;
    draft.named = "temperature_difference";
    draft.place = undefined;
  }
}

/** K between what condenses and the water that leaves it, at most. Common practice, no source. */
const mostApproach = 12;

/** "sct 41,3 leaving 35,8": what leaves right behind the condensing temperature, and a little below it, is the condenser's. */
function ofCondenser(drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left?.place !== "discharge_saturation" || right.place !== "water_out") return;
    const scale = (right.unit ?? left.unit)?.figure === "F" ? 1.8 : 1;
    const apart = (left.value - right.value) / scale;
    if (right.sentence === left.sentence && apart >= 0 && apart < mostApproach * 1.8)
      right.place = "condenser_out";
  });
}

/** "evap app 2.1 cond app 4.8": shortened, behind the end that it is of. */
function short(items: readonly Item[], drafts: readonly Draft[]): void {
  for (const draft of drafts) {
    if (draft.named !== undefined || draft.unit !== undefined) continue;
    if (!/^(?:app|appr|apr)$/.test(items[draft.index - 1]?.text ?? "")) continue;
    if (!ends.test(items[draft.index - 2]?.text ?? "")) continue;
    draft.named = "temperature_difference";
    draft.place = undefined;
    draft.hint = undefined;
    // "appr 3" is an approach, no about
    const word = items[draft.index - 1];
    if (word !== undefined) word.roles = 0;
  }
}
