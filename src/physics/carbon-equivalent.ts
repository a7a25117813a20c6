/** Months between leak checks by t CO2e, Annex I gases. Source: Regulation (EU) 2024/573 Art. 5. */
const intervals = [
  { fromT: 500, months: 3, withDetectionMonths: 6 },
  { fromT: 50, months: 6, withDetectionMonths: 12 },
  { fromT: 5, months: 12, withDetectionMonths: 24 },
] as const;

/**
 * A charge in tonnes of CO2 equivalent.
 *
 * @param chargeKg of the one circuit
 * @param gwp by the annexes of the regulation: AR4 for HFC, AR6 for HFO, mass-weighted for blends
 * Error: exact. Source: Regulation (EU) 2024/573 Art. 3(3), Annexes I, II, VI.
 */
export function carbonEquivalentT(chargeKg: number, gwp: number): number {
  return (chargeKg * gwp) / 1_000;
}

/**
 * Months between leak checks in the EU; undefined below 5 t, where none is asked for.
 *
 * @param tonnes CO2 equivalent
 * @param hasDetection whether a leak detection system is fitted
 * Source: Regulation (EU) 2024/573 Art. 5; the entry limit of 5 t from memory.
 * Hermetically sealed and labelled: none below 10 t.
 */
export function leakCheckMonths(tonnes: number, hasDetection: boolean): number | undefined {
  const row = intervals.find(({ fromT }) => tonnes >= fromT);
  return hasDetection ? row?.withDetectionMonths : row?.months;
}
