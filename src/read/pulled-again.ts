import { isStrongBreak, isWeakBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const evacuates = /\b(?:vac|vacuum|evac|evacuated|microns?|broke)\b/;
const pulls = /^(?:pull|pulls|pulled|pulling|down)$/;

/** "pulled vac to 280, broke w n2, pulled again to 240": behind its own verb no pressure of the nitrogen. */
export function pulledAgain(drafts: readonly Draft[], items: readonly Item[]): void {
  if (!items.some((item) => evacuates.test(item.text))) return;
  for (const draft of drafts) {
    if (draft.unit !== undefined || draft.named !== "pressure" || draft.place !== undefined)
      continue;
    let at = draft.index - 1;
    while (at >= 0) {
      const item = items[at];
      if (item === undefined || isStrongBreak(item) || isWeakBreak(item)) break;
      if (/^(?:nitrogen|n2|nitro)$/.test(item.text)) break;
      at--;
    }
    const clause = items.slice(at + 1, draft.index);
    if (at < 0 || !clause.some((item) => pulls.test(item.text))) continue;
    if (clause.some((item) => item.label?.quantity === "pressure")) continue;
    draft.named = "vacuum";
    draft.hint = undefined;
  }
}

/** "final 380 mic, 15 min hold 410": a capacitor is not timed, so mic is short for microns. */
export function micronsTimed(drafts: readonly Draft[], items: readonly Item[]): void {
  const mics = drafts.filter((one) => one.letter === "mic" && one.named !== "capacitance");
  if (mics.length === 0) return;
  const timed = drafts.some((one) => one.after !== undefined || one.lasting !== undefined);
  const pumped = items.some(
    (item) =>
      evacuates.test(item.text) ||
      /^(?:pump|pump (?:on|off)|valved|isolated|blanked|final)$/.test(item.text),
  );
  if (!timed && !pumped) return;
  for (const one of mics) one.unit = unitCalled("micron");
}
