import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { within } from "./line-range.ts";

/** F of a line that is taken for one by the other side's alone: narrower than a line may be. Common practice, no source. */
const suctionLineF = [20, 95] as const;
const liquidLineF = [60, 150] as const;

/** Words by which a second pressure is one of another moment or of another machine. */
const anew =
  /^(?:now|then|after|later|again|both|each|other|was|from|to|up|down|at|climbed|dropped)$/;

function isBare(draft: Draft): boolean {
  return (
    draft.unit === undefined &&
    draft.rating === undefined &&
    draft.points === undefined &&
    draft.action === undefined &&
    draft.subject === undefined &&
    !draft.over &&
    !draft.same
  );
}

/**
 * "118 over 365. liquid 98 suct 52": with both sides' pressures told, what is named beside the liquid
 * line is the other line, no second pressure.
 */
export function linesBehindGauges(list: readonly Draft[], items: readonly Item[]): void {
  if (list.length < 4) return;
  for (const [order, draft] of list.entries()) {
    if (draft.place !== "suction" || !isBare(draft) || !within(draft.value, suctionLineF)) continue;
    if (draft.hint === "temperature" || draft.named === "temperature") continue;
    const beside = [list[order - 1], list[order + 1]].find((one) => one?.place === "liquid");
    if (beside === undefined || !isBare(beside) || !within(beside.value, liquidLineF)) continue;
    const told = list.slice(0, Math.min(order, list.indexOf(beside)));
    const low = told.findLast((one) => one.place === "suction");
    const high = told.findLast((one) => one.place === "discharge");
    if (low === undefined || high === undefined || high.value <= low.value) continue;
    const words = items.slice(
      Math.max(low.index, high.index) + 1,
      Math.max(draft.index, beside.index),
    );
    if (words.some(({ text, kind }) => anew.test(text) || kind === itemKind.subject)) continue;
    for (const line of [draft, beside]) {
      line.named = "temperature";
      line.hint = "temperature";
    }
  }
}
