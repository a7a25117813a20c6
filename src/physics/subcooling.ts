import type { Refrigerant } from "./refrigerant.ts";
import { saturationCel } from "./saturation-temperature.ts";

/**
 * Subcooling, in K: the bubble point at the liquid line's pressure over the line's temperature.
 *
 * @param refrigerant one of the tables'
 * @param absolutePa absolute pressure at the liquid line
 * @param lineCel temperature of the liquid line
 * Error: 0.01 K from the tables. Taken from the discharge pressure instead it reads high by the
 * condenser's drop, commonly 5 to 20 psi, which is 0.5 to 2 K.
 * Source: definition; ASHRAE Handbook Refrigeration uses the bubble point for blends.
 * Why: at the bubble point the last vapor is gone.
 */
export function subcoolingK(
  refrigerant: Refrigerant,
  absolutePa: number,
  lineCel: number,
): number | undefined {
  const bubbleCel = saturationCel(refrigerant, "bubble", absolutePa);
  return bubbleCel === undefined ? undefined : bubbleCel - lineCel;
}
