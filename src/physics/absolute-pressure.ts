/**
 * Absolute pressure from a gauge's, in Pa.
 *
 * @param gaugePa read on a gauge, negative below the air's pressure
 * @param ambientPa absolute pressure of the air around the gauge
 * Error: that of `ambientPa`. Source: definition of gauge pressure.
 * Why: undefined at or below a perfect vacuum, where the gauge or the unit must be wrong.
 */
export function absolutePaFromGauge(gaugePa: number, ambientPa: number): number | undefined {
  const absolutePa = gaugePa + ambientPa;
  return absolutePa > 0 ? absolutePa : undefined;
}
