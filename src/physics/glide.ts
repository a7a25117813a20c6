import type { Refrigerant } from "./refrigerant.ts";
import { saturationCel } from "./saturation-temperature.ts";

/**
 * Temperature glide at a pressure, in K: dew minus bubble.
 *
 * @param refrigerant one of the tables'
 * @param absolutePa absolute pressure within the tables
 * Error: 0.01 K against the computed lines; about 0.3 K between mixture models (R-448A, R-449A,
 * R-454B). Source: definition, ASHRAE 34.
 * Why: where it is more than a degree, the wrong line makes a wrong verdict.
 */
export function glideK(refrigerant: Refrigerant, absolutePa: number): number | undefined {
  const dewCel = saturationCel(refrigerant, "dew", absolutePa);
  const bubbleCel = saturationCel(refrigerant, "bubble", absolutePa);
  return dewCel === undefined || bubbleCel === undefined ? undefined : dewCel - bubbleCel;
}
