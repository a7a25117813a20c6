import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const gauge = /^(?:gauges?|manifold)$/;
const tells = /^(?:say|says|said|has|have|had|read|reads|show|shows|showed|at|is|are|:)$/;
/** How far a board and a gauge on one port may lie apart, as a share. Our choice, no source. */
const apart = [0.3, 3] as const;

/** "controller shows 610 psi head, manifold has 340": the same pressure, as his own gauges have it. */
export function boardThenGauge(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((draft, i) => {
    const board = drafts[i - 1];
    if (board === undefined || draft.unit !== undefined || draft.quantity !== undefined) return;
    const [word, verb] = [items[draft.index - 2]?.text ?? "", items[draft.index - 1]?.text ?? ""];
    const said = (gauge.test(word) && tells.test(verb)) || gauge.test(verb);
    const ofPort =
      board.ownUnit && board.unit?.dimension === "pressure" && board.place !== undefined;
    const share = draft.value / board.value;
    if (!said || !ofPort || share < apart[0] || share > apart[1] || draft.place !== undefined)
      return;
    draft.quantity = "pressure";
    draft.named = "pressure";
    draft.place = board.place;
    draft.unit = board.unit;
    draft.assumedUnit = true;
    draft.settled = true;
  });
}
