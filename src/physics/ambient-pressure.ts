import { standardAtmospherePa } from "./constants.ts";

/** Range of altitudes, in m, where the standard atmosphere's formula holds. */
export const altitudeRangeM = [-5_000, 11_000] as const;

/**
 * Air pressure at an altitude, in Pa absolute.
 *
 * @param altitudeM above sea level, -5000 to 11000 m
 * Error: the formula meets the standard atmosphere within 0.01 %; weather moves the true pressure
 * by up to 3 kPa, which is 0.3 K of saturation at 35 psi of a medium-pressure refrigerant.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 3; checked against psychrolib.
 * Why: a gauge reads from the local air, so each saturation temperature needs it.
 */
export function ambientPaFromAltitude(altitudeM: number): number | undefined {
  if (!(altitudeM >= altitudeRangeM[0] && altitudeM <= altitudeRangeM[1])) return undefined;
  return standardAtmospherePa * (1 - 2.25577e-5 * altitudeM) ** 5.2559;
}
