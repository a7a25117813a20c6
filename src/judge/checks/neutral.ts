import type { Reading } from "../../model.ts";
import { hasPoint, numbersOf } from "../pick.ts";

/**
 * Greatest over least of the legs to a sound neutral: 126 over 108 V, the two ends of what equipment
 * may be fed with in normal service. Source: ANSI C84.1, range A, utilization.
 */
const mostApart = 126 / 108;
/** The high leg (208 to ground of a 240 V delta) over the others. Source: delta geometry, sqrt(3). */
export const highLegShare = { from: 1.6, to: 1.85 } as const;

/** "147 and 93 V to neutral": the legs share unevenly what is steady between them, so the neutral floats. */
export function isNeutralAdrift(readings: readonly Reading[]): boolean {
  if (readings.length < 2 || !readings.every((one) => hasPoint(one, "N"))) return false;
  const values = numbersOf(readings);
  const apart = Math.max(...values) / Math.max(1, Math.min(...values));
  return apart > mostApart && (apart < highLegShare.from || apart > highLegShare.to);
}
