import { chebyshev } from "./chebyshev.ts";
import { zeroCelInK } from "./constants.ts";
import type { Refrigerant } from "./refrigerant.ts";
import { type SaturationTable, saturationTables } from "./tables/saturation.ts";

/** Saturated liquid (`bubble`) or saturated vapor (`dew`); one line for a pure fluid. */
export type SaturationLine = "bubble" | "dew";

/** The series' variable: +1 at the table's coldest, -1 at its hottest, linear in 1/T. */
export function reducedInverse(table: SaturationTable, cel: number): number {
  const hot = 1 / (table.maxCel + zeroCelInK);
  const cold = 1 / (table.minCel + zeroCelInK);
  return (2 / (cel + zeroCelInK) - hot - cold) / (cold - hot);
}

/**
 * Saturation pressure, in Pa absolute.
 *
 * @param refrigerant one of the tables'
 * @param line bubble or dew
 * @param cel -60 Cel to the table's `maxCel` (1.5 K below critical for pure fluids, 4 to 10 K for blends)
 * Error: at most 0.003 K in temperature against the computed values, see `tables/saturation.ts`.
 * Source: own fit, see the table.
 * Why: ln p over 1/T is nearly straight, so fourteen terms reach from -60 Cel to near critical.
 */
export function saturationPa(
  refrigerant: Refrigerant,
  line: SaturationLine,
  cel: number,
): number | undefined {
  const table: SaturationTable = saturationTables[refrigerant];
  if (!(cel >= table.minCel && cel <= table.maxCel)) return undefined;
  return 1_000 * Math.exp(chebyshev(table[line], reducedInverse(table, cel)));
}
