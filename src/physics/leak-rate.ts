/** Days that a year has in the regulation's formulas. Source: 40 CFR 82.152 and 84.102. */
const yearDays = 365;

/**
 * Leak rate by the annualizing method, in percent of the full charge a year.
 *
 * @param addedKg added now, above 0; what was recovered and put back does not count
 * @param fullChargeKg above 0
 * @param daysSinceAddition since the last addition, at least 1; more than 365 count as 365
 * Error: exact; the full charge is often known to 10 % only.
 * Source: 40 CFR 82.152 and 84.102, definition of leak rate, annualizing method.
 * Why: the shorter of 365 days and the days since the last addition, as the text has it.
 */
export function annualizedLeakPercent(
  addedKg: number,
  fullChargeKg: number,
  daysSinceAddition: number,
): number | undefined {
  if (!(addedKg >= 0 && fullChargeKg > 0 && daysSinceAddition > 0)) return undefined;
  const days = Math.min(Math.max(1, daysSinceAddition), yearDays);
  return (addedKg / fullChargeKg) * (yearDays / days) * 100;
}

/**
 * Leak rate by the rolling average, in percent of the full charge.
 *
 * @param addedLastYearKg all that was added in the last 365 days, or since the last successful
 * follow-up verification where that is shorter
 * @param fullChargeKg above 0
 * Error: exact. Source: 40 CFR 82.152 and 84.102, rolling average method; the clause on the
 * follow-up verification from memory.
 * Why: a facility uses one of the two methods for all its appliances; the office says which.
 */
export function rollingLeakPercent(
  addedLastYearKg: number,
  fullChargeKg: number,
): number | undefined {
  if (!(addedLastYearKg >= 0 && fullChargeKg > 0)) return undefined;
  return (addedLastYearKg / fullChargeKg) * 100;
}
