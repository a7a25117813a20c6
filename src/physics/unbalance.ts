/** Unbalance of three-phase voltages and currents. */

/**
 * Greatest deviation from the mean over the mean, percent; undefined for fewer than two values or
 * a mean of 0. Source: NEMA MG 1, 14.36.
 */
export function unbalancePercent(values: readonly number[]): number | undefined {
  if (values.length < 2) return;
  const average = values.reduce((sum, one) => sum + one, 0) / values.length;
  if (!(average > 0)) return;
  return (100 * Math.max(...values.map((one) => Math.abs(one - average)))) / average;
}

/**
 * Voltage unbalance factor (negative over positive sequence), percent, from three line-to-line
 * magnitudes above 0; undefined where no triangle has them. Source: IEC 61000-4-30 (from memory).
 */
export function voltageUnbalanceFactorPercent(lines: readonly [number, number, number]) {
  const squares = lines.reduce((sum, one) => sum + one ** 2, 0);
  if (!(squares > 0)) return;
  const beta = lines.reduce((sum, one) => sum + one ** 4, 0) / squares ** 2;
  const inner = 3 - 6 * beta;
  if (inner < 0) return;
  const root = Math.min(1, Math.sqrt(inner));
  return 100 * Math.sqrt((1 - root) / (1 + root));
}

/** Percent. Source: NEMA MG 1, 14.36 (1 and 5); common practice for cooling equipment (2). */
export const voltageUnbalanceLimits = { fullRating: 1, cooling: 2, doNotRun: 5 } as const;

/** Points of the derating curve. Source: NEMA MG 1, figure 14-1. */
const deratingPoints = [
  { percent: 0, factor: 1 },
  { percent: 1, factor: 1 },
  { percent: 2, factor: 0.95 },
  { percent: 3, factor: 0.88 },
  { percent: 4, factor: 0.82 },
  { percent: 5, factor: 0.75 },
] as const;

/**
 * Share of its rated power that a motor may give at a voltage unbalance of 0 to 5 percent;
 * undefined outside. Error: the curve is read to about 0.02. Source: NEMA MG 1, figure 14-1.
 */
export function deratingFactor(percent: number): number | undefined {
  if (percent < 0 || percent > voltageUnbalanceLimits.doNotRun) return;
  const above = deratingPoints.findIndex((one) => one.percent >= percent);
  const high = deratingPoints[above];
  const low = deratingPoints[Math.max(0, above - 1)];
  if (high === undefined || low === undefined) return;
  if (high.percent === low.percent) return high.factor;
  const share = (percent - low.percent) / (high.percent - low.percent);
  return low.factor + share * (high.factor - low.factor);
}

/** Extra temperature rise of the hottest phase, percent. Source: NEMA MG 1 commentary: 2 u^2. */
export function extraHeatPercent(voltageUnbalance: number): number {
  return 2 * voltageUnbalance ** 2;
}

/** Current unbalance a voltage unbalance explains, percent. Source: NEMA MG 1, 14.36: 6 to 10 times. */
export function explainedCurrentUnbalance(voltageUnbalance: number): { from: number; to: number } {
  return { from: 6 * voltageUnbalance, to: 10 * voltageUnbalance };
}

/** Percent of a motor's current beyond which supply or motor is looked at. Source: maintenance literature: above 10. */
export const currentUnbalanceLimit = 10;
