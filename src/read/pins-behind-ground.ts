import type { Draft } from "./draft.ts";
import { unitCalled } from "./kinds.ts";

/** Ohm between two pins of a winding; no compressor or fan motor of this trade has more. Common practice, no source. */
const mostWinding = 30;

const isPins = (draft: Draft): boolean =>
  draft.points?.every((points) => points.length === 2 && !points.includes("ground")) === true;

/**
 * "T1-G 450 meg, T1-T2 .61 T2-T3 .62": the megohms were said to ground, and two pins of one winding
 * have ohms between them unless megohms are said there too.
 */
export function pinsBehindGround(list: readonly Draft[]): void {
  differingPins(list);
  const insulated = list.some(
    (draft) => isPins(draft) && draft.ownUnit && (draft.unit?.factor ?? 0) >= 1e5,
  );
  if (insulated) return;
  for (const draft of list) {
    const carried = draft.quantity === "insulation_resistance" && !draft.ownUnit && !draft.over;
    if (!carried || !isPins(draft) || !(draft.value < mostWinding)) continue;
    draft.quantity = "winding_resistance";
    draft.unit = unitCalled("ohm");
    draft.assumedUnit = true;
    draft.assumedQuantity = true;
    draft.testVoltage = undefined;
  }
}

/** "T1-T2 470, T2-T3 40, T1-T3 35": one row is of one quantity; where its sizes say two, nobody knows. */
function differingPins(list: readonly Draft[]): void {
  for (let at = 0; at + 2 < list.length; at++) {
    const row = list.slice(at, at + 3);
    const guessed = row.every(
      (draft) => isPins(draft) && !draft.ownUnit && draft.named === undefined && !draft.over,
    );
    if (!guessed || new Set(row.map(({ quantity }) => quantity)).size === 1) continue;
    for (const draft of row) {
      draft.quantity = undefined;
      draft.question = "quantity";
    }
  }
}
