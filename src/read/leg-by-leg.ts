import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";

const LEGS = 3;

/** "L1 210", "L2 205", "and 198 on L3": a row of three that was told leg by leg, a message each; empty where the last three are none. */
export function legByLeg({ readings, counts }: Context): readonly Reading[] {
  const row = readings.slice(-LEGS);
  const [first] = row;
  if (first === undefined || !counts.slice(-LEGS).every((count) => count === 1)) return [];
  const alike = row.every(
    (one) =>
      one.quantity === first.quantity &&
      one.subject === first.subject &&
      one.rating === undefined &&
      one.points !== undefined,
  );
  return alike && new Set(row.map(({ points }) => points?.[0])).size === LEGS ? row : [];
}
