import psychrolib from "psychrolib";

/** Cel, where the saturation equations hold */
const rangeCel = [-100, 200] as const;

/**
 * Pressure of water vapor over water, or over ice below 0.01 Cel, in Pa absolute.
 *
 * @param cel -100 to 200 Cel
 * Error: 0.03 % over water, 0.5 % over ice below -60 Cel.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5 and 6 (Hyland & Wexler).
 * Why: it says at which vacuum a wet spot of that temperature begins to boil off.
 */
export function waterVaporPa(cel: number): number | undefined {
  if (!(cel >= rangeCel[0] && cel <= rangeCel[1])) return undefined;
  return psychrolib.GetSatVapPres(cel);
}

/**
 * Temperature at which water or ice has a given vapor pressure, in Cel.
 *
 * @param absolutePa 0.0014 Pa to 1.55 MPa
 * Error and source: as `waterVaporPa`, bisected to 0.0001 K.
 * Why: a vacuum that hangs is the vapor pressure of the coldest wet spot.
 */
export function waterBoilingCel(absolutePa: number): number | undefined {
  let low: number = rangeCel[0];
  let high: number = rangeCel[1];
  if (!(absolutePa >= psychrolib.GetSatVapPres(low))) return undefined;
  if (!(absolutePa <= psychrolib.GetSatVapPres(high))) return undefined;
  while (high - low > 0.0001) {
    const middle = (low + high) / 2;
    if (psychrolib.GetSatVapPres(middle) < absolutePa) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
