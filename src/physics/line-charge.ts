import { liquidDensityKgM3 } from "./liquid-density.ts";
import type { Refrigerant } from "./refrigerant.ts";
import { tubeBoreM2 } from "./tube-bore.ts";

/** Cel, 100 F: a liquid line on a warm day. Common practice, no source. */
export const usualLiquidCel = 37.8;

/**
 * Refrigerant that a liquid line holds, in kg.
 *
 * @param refrigerant one of the tables'
 * @param line outside diameter in inches and length in m beyond what the plate covers
 * @param liquidCel temperature of the liquid, -60 Cel to the table's end
 * Error: 2 % from the tube, 0.3 % for each K of the liquid's temperature.
 * Source: pi/4 x bore squared x length x density; bore ASTM B280, density `liquid-density.ts`.
 * Why: the 0.6 oz/ft that is carried around for 3/8 in is R-22's and adds 15 to 25 % too much of
 * the newer refrigerants. The gas line holds little and is left out.
 */
export function lineChargeKg(
  refrigerant: Refrigerant,
  line: { readonly outsideIn: number; readonly lengthM: number },
  liquidCel: number = usualLiquidCel,
): number | undefined {
  const boreM2 = tubeBoreM2(line.outsideIn);
  const densityKgM3 = liquidDensityKgM3(refrigerant, liquidCel);
  if (boreM2 === undefined || densityKgM3 === undefined || line.lengthM < 0) return undefined;
  return boreM2 * line.lengthM * densityKgM3;
}
