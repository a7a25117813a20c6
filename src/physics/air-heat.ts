import { standardAtmospherePa } from "./constants.ts";

/**
 * W for each m3/s and K: 1.08 Btu/h for each cfm and F, which is dry standard air
 * (0.075 lb/ft3 x 0.24 Btu/lb F x 60).
 * Source: ASHRAE Handbook Fundamentals, nonresidential cooling load; from memory.
 */
const sensibleFactor = 1_207.2;

/** kg/m3, dry standard air: 0.075 lb/ft3. Source: as above (the 4.5 of the total heat formula). */
const standardDensityKgM3 = 1.2014;

/** Air density over standard density; by altitude alone, as the printed formulas do. */
function densityRatio(ambientPa: number): number {
  return ambientPa / standardAtmospherePa;
}

/**
 * Sensible heat of an air stream, in W.
 *
 * @param airflowM3s at the unit
 * @param differenceK between return and supply
 * @param ambientPa absolute air pressure at the site
 * Error: 2 % low for humid air, 3 % either way for air 10 K off 21 Cel, since density follows the
 * altitude alone. Source: ASHRAE Handbook Fundamentals (factor 1.08), from memory.
 * Why: the factor technicians use, corrected where it is most wrong: 17 % at 1500 m.
 */
export function sensibleW(airflowM3s: number, differenceK: number, ambientPa: number): number {
  return sensibleFactor * densityRatio(ambientPa) * airflowM3s * differenceK;
}

/**
 * Airflow from a known heat and the rise that it makes, in m3/s.
 *
 * @param heatW sensible heat into the air, the blower's watts included where it is inside the probes
 * @param differenceK rise, above 0
 * @param ambientPa absolute air pressure at the site
 * Error: as `sensibleW`, plus 5 % for each K that the rise is misread out of 20.
 * Source: common practice: cfm = W x 3.412 / (1.08 x F). Why: the inverse of `sensibleW`.
 */
export function airflowM3sFromHeat(
  heatW: number,
  differenceK: number,
  ambientPa: number,
): number | undefined {
  if (!(differenceK > 0 && heatW > 0)) return undefined;
  return heatW / (sensibleFactor * densityRatio(ambientPa) * differenceK);
}

/**
 * Total heat of an air stream, in W.
 *
 * @param airflowM3s at the unit
 * @param enthalpyDifferenceJPerKg of return over supply air, from `moist-air.ts`
 * @param ambientPa absolute air pressure at the site
 * Error: as `sensibleW`. Source: ASHRAE Handbook Fundamentals (factor 4.5), from memory.
 * Why: the same standard density as the sensible heat, so that their ratio makes sense.
 */
export function totalW(
  airflowM3s: number,
  enthalpyDifferenceJPerKg: number,
  ambientPa: number,
): number {
  return standardDensityKgM3 * densityRatio(ambientPa) * airflowM3s * enthalpyDifferenceJPerKg;
}
