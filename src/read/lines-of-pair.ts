import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import { hotLines } from "./head-then-discharge.ts";
import { type Item, itemKind } from "./item.ts";

/** Degrees Celsius of a line. Common practice, no source. */
const lineC: readonly [number, number] = [-40, 65];

/** Share of a side's pressure under which a bare figure of that side is its line's temperature, the gauges being told. */
const lineUnder = 0.8;

/** "118/342 sh 9 discharge 168": the head was told, so it is how hot the line is; near the head it may be the gauge. */
function isHotLine(draft: Draft, head: Draft, units: UnitHabit): boolean {
  const [least, most] = hotLines[units];
  const far = Math.abs(draft.value - head.value) > head.value * (1 - lineUnder);
  return far && draft.value >= least && draft.value <= most;
}

/** "49/202, suct 28": behind both gauges a side's bare figure is its line. */
export function linesOfPair(
  drafts: readonly Draft[],
  units: UnitHabit,
  [left, right]: readonly [Draft, Draft],
  items: readonly Item[],
): void {
  for (const draft of drafts) {
    // "comp 1 127 over 391, comp 2 low side 94": of another machine
    const next = items.slice(right.index + 1, draft.index);
    if (next.some(({ kind, owner }) => kind === itemKind.subject && owner === undefined)) continue;
    if (draft.index <= right.index || draft.unit !== undefined || draft.named !== undefined)
      continue;
    if (draft.points !== undefined || draft.rating !== undefined || draft.after !== undefined)
      continue;
    if (draft.place === "discharge" && isHotLine(draft, right, units)) draft.named = "temperature";
    const side = draft.place === "suction" ? left : draft.place === "liquid" ? right : undefined;
    // bars and degrees are of one size, and no side has two pressures
    const warm = units === "si" && draft.value >= lineC[0] && draft.value <= lineC[1];
    if (side !== undefined && (warm || draft.value < lineUnder * side.value))
      draft.named = "temperature";
  }
}
