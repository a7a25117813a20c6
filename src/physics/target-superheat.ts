import { fahrenheitFromCel, kelvinPerFahrenheit } from "./constants.ts";
import { within } from "./within.ts";

/** F, where the rule of thumb stays within 3 F of the printed tables. From memory. */
const wetBulbRangeF = [50, 76] as const;
const outdoorRangeF = [55, 115] as const;

/**
 * Target superheat of a fixed-orifice comfort cooling circuit, in K:
 * (3 x indoor wet bulb - 80 - outdoor dry bulb) / 2, in Fahrenheit.
 *
 * @param indoorWetBulbCel of the return air, 10 to 24.4 Cel
 * @param outdoorCel outdoor dry bulb, 12.8 to 46.1 Cel
 * Error: up to 3 F from the printed tables at wet bulbs of 60 to 70 F and outdoor 75 to 105 F, up
 * to 6.5 F in the corners. Below 5 F the circuit can't be charged by superheat.
 * Source: rule of thumb printed in many places, common practice, origin unknown.
 * Why: the formula is what technicians carry; the printed tables differ among themselves.
 */
export function targetSuperheatK(indoorWetBulbCel: number, outdoorCel: number): number | undefined {
  const wetBulbF = fahrenheitFromCel(indoorWetBulbCel);
  const outdoorF = fahrenheitFromCel(outdoorCel);
  if (!within(wetBulbF, wetBulbRangeF)) return undefined;
  if (!within(outdoorF, outdoorRangeF)) return undefined;
  return ((3 * wetBulbF - 80 - outdoorF) / 2) * kelvinPerFahrenheit;
}
