import type { Refrigerant } from "./refrigerant.ts";
import { saturationCel } from "./saturation-temperature.ts";

/**
 * Superheat, in K: vapor temperature over the dew point at the same place's pressure.
 * On the discharge side it is the discharge superheat.
 *
 * @param refrigerant one of the tables'
 * @param absolutePa absolute pressure at the vapor line
 * @param lineCel temperature of the vapor line
 * Error: 0.01 K from the tables, 0.3 K between mixture models; the probe's own is usually more.
 * Source: definition; ASHRAE Handbook Refrigeration uses the dew point for blends.
 * Why: at the dew point the last drop is gone; the bubble point would read 5 to 6 K too much on
 * R-407C, R-448A and R-449A.
 */
export function superheatK(
  refrigerant: Refrigerant,
  absolutePa: number,
  lineCel: number,
): number | undefined {
  const dewCel = saturationCel(refrigerant, "dew", absolutePa);
  return dewCel === undefined ? undefined : lineCel - dewCel;
}
