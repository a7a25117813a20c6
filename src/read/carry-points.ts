import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";

/** The points that are still being timed: of the test just announced, or of the last value. */
function timedPoints(context: Context): readonly string[] | undefined {
  const { readings, test } = context;
  if (test?.point !== undefined) return [test.point, "ground"];
  const last = readings[readings.length - 1];
  if (last?.quantity !== "insulation_resistance") return undefined;
  return last.after_s === undefined && context.latest > 1 ? undefined : last.points;
}

/** A test of windings is paced by minutes: behind hours something else was done. Common practice, no source. */
const longestTest = 3600;

/** "after 4 h drying 820": how long it was dried, no time of the test. */
function dropHours(drafts: readonly Draft[]): void {
  for (const draft of drafts)
    if (draft.quantity === "insulation_resistance" && (draft.after ?? 0) >= longestTest)
      draft.after = undefined;
}

/** "ten minutes 390" behind "lead 1 to ground one minute 260": the same lead is still being timed. */
export function carryPoints(drafts: readonly Draft[], context: Context): void {
  dropHours(drafts);
  const points = timedPoints(context);
  if (points === undefined) return;
  const seen = drafts.filter((one) => !one.gone && one.after !== undefined);
  if (new Set(seen.map((one) => one.after)).size < seen.length) return;
  for (const draft of drafts) {
    if (draft.gone || draft.points !== undefined || draft.grounded || draft.subject !== undefined)
      continue;
    if (draft.quantity !== "insulation_resistance" || draft.after === undefined) continue;
    if (draft.rating !== undefined || draft.count > 1) continue;
    draft.points = [points];
    draft.assumedPoints = true;
  }
}
