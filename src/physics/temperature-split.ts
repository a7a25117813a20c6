import { fahrenheitFromCel, kelvinPerFahrenheit } from "./constants.ts";
import { within } from "./within.ts";

/** F, the part of the table that the fit was made over */
const wetBulbRangeF = [50, 76] as const;
const dryBulbRangeF = [70, 84] as const;

/**
 * Target air temperature split over a cooling coil, in K.
 *
 * @param returnCel return dry bulb, 21.1 to 28.9 Cel
 * @param returnWetBulbCel return wet bulb, 10 to 24.4 Cel, below the dry bulb
 * Error: 0.2 F against the table's remembered cells; the table itself is meant within 3 F, for
 * ducted single-speed units near 400 cfm a ton, never for part load.
 * Source: California Title 24, Reference Residential Appendix RA3.2, table RA3.2-3 (from memory);
 * own fit, quadratic in wet bulb and linear in dry bulb.
 * Why: the more moisture the coil takes out, the less it cools; a fixed "20 degrees" is wrong on
 * dry and on humid days.
 */
export function targetSplitK(returnCel: number, returnWetBulbCel: number): number | undefined {
  const dryBulbF = fahrenheitFromCel(returnCel);
  const wetBulbF = fahrenheitFromCel(returnWetBulbCel);
  if (!within(wetBulbF, wetBulbRangeF)) return undefined;
  if (!within(dryBulbF, dryBulbRangeF)) return undefined;
  if (wetBulbF > dryBulbF) return undefined;
  const moist = wetBulbF - 63;
  const splitF = 15.88 - 0.6783 * moist - 0.02272 * moist ** 2 + 0.547 * (dryBulbF - 70);
  return splitF > 0 ? splitF * kelvinPerFahrenheit : undefined;
}
