import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const ends = /^(?:evap|evaporator|evp|cond|condenser|cnd|chiller|clr)$/;

/** "approach evap 2.1 cond 4.8": the word holds for each end of the machine that is named behind it. */
export function approaches(items: readonly Item[], drafts: readonly Draft[]): void {
  short(items, drafts);
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
