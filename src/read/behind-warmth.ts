import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/**
 * "meg check with the shell at 88 degrees lead one 210": the test and its unit were named before the warmth
 * that was taken out of the row, so they are of the first value behind it.
 */
export function behindWarmth(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((taken, order) => {
    if (!taken.gone || items[taken.index]?.owner !== "test temperature") return;
    const next = drafts.slice(order + 1).find((draft) => !draft.gone);
    if (next === undefined || next.unit !== undefined || next.named !== undefined) return;
    if (drafts.slice(0, order).some((draft) => !draft.gone)) return;
    const unit = taken.before.find(
      (index) =>
        items[index]?.kind === itemKind.unit && items[index]?.unit?.dimension === "resistance",
    );
    const megged = items.some(({ text }) => /^meg(?:ged|ger|gered|ging|s)?$/.test(text));
    if (unit !== undefined) next.unit = items[unit]?.unit;
    else if (megged) next.named = "insulation_resistance";
    else if (taken.named?.endsWith("_resistance") === true) next.named = taken.named;
    else return;
    next.before = [...taken.before.filter((index) => index === unit), ...next.before];
  });
}
