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
