/** Run capacitors. */

/** Percent of the rating where the label gives none. Source: common on run capacitors; the label governs. */
export const runTolerancePercent = 6;

/**
 * Capacitance under load, F. `amps` flows in the start winding's wire, `volts` stands across the
 * capacitor (not the line), `hertz` above 0. Source: Xc = 1/(2 pi f C).
 */
export function capacitanceUnderLoadF(amps: number, volts: number, hertz: number) {
  if (!(volts > 0) || !(hertz > 0) || !(amps >= 0)) return;
  return amps / (2 * Math.PI * hertz * volts);
}

/** Signed deviation from the rating, percent; undefined for a rating of 0. Source: arithmetic. */
export function capacitanceErrorPercent(measuredF: number, ratedF: number): number | undefined {
  return ratedF > 0 ? (100 * (measuredF - ratedF)) / ratedF : undefined;
}

/** Limits of a tolerance, F. Source: label. */
export function toleranceLimitsF(ratedF: number, percent: number): { low: number; high: number } {
  return { low: ratedF * (1 - percent / 100), high: ratedF * (1 + percent / 100) };
}
