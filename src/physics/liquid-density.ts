import { chebyshev } from "./chebyshev.ts";
import { zeroCelInK } from "./constants.ts";
import type { Refrigerant } from "./refrigerant.ts";
import { type SaturationTable, saturationTables } from "./tables/saturation.ts";

/**
 * Density of saturated liquid, in kg/m3.
 *
 * @param refrigerant one of the tables'
 * @param cel -60 Cel to the table's `maxCel`
 * Error: 0.001 % against the computed values; subcooled liquid is up to 0.5 % denser than that.
 * Source: own fit, see `tables/saturation.ts`.
 * Why: density falls with the cube root of the distance to the critical point, so a series in
 * that root needs few terms.
 */
export function liquidDensityKgM3(refrigerant: Refrigerant, cel: number): number | undefined {
  const table: SaturationTable = saturationTables[refrigerant];
  if (!(cel >= table.minCel && cel <= table.maxCel)) return undefined;
  const { criticalCel, thetaMin, thetaMax, coefficients } = table.liquid;
  const theta = Math.cbrt(1 - (cel + zeroCelInK) / (criticalCel + zeroCelInK));
  return chebyshev(coefficients, (2 * theta - thetaMin - thetaMax) / (thetaMax - thetaMin));
}
