import { chebyshev, chebyshevSlope } from "./chebyshev.ts";
import { zeroCelInK } from "./constants.ts";
import type { Refrigerant } from "./refrigerant.ts";
import type { SaturationLine } from "./saturation-pressure.ts";
import { type SaturationTable, saturationTables } from "./tables/saturation.ts";

/** Newton steps: the start is within 3 % and each step squares the error. */
const newtonSteps = 4;

/** of ln p, so that a pressure computed for a table's end is still within it */
const rounding = 1e-12;

/**
 * Saturation temperature, in Cel.
 *
 * @param refrigerant one of the tables'
 * @param line bubble or dew
 * @param absolutePa absolute pressure, within the table's pressures
 * Error: at most 0.003 K against the computed values; it inverts `saturationPa` within 1e-9 K.
 * Source: own fit, see `tables/saturation.ts`.
 * Why: Newton on the same series, so that there and back give the same number; a separate fit of
 * T over p would not.
 */
export function saturationCel(
  refrigerant: Refrigerant,
  line: SaturationLine,
  absolutePa: number,
): number | undefined {
  const table: SaturationTable = saturationTables[refrigerant];
  const coefficients = table[line];
  const target = Math.log(absolutePa / 1_000);
  const coldest = chebyshev(coefficients, 1) - rounding;
  if (!(target >= coldest && target <= chebyshev(coefficients, -1) + rounding)) return undefined;
  let u = (target - (coefficients[0] ?? 0)) / (coefficients[1] ?? 1);
  for (let step = 0; step < newtonSteps; step++)
    u -= (chebyshev(coefficients, u) - target) / chebyshevSlope(coefficients, u);
  const hot = 1 / (table.maxCel + zeroCelInK);
  const cold = 1 / (table.minCel + zeroCelInK);
  return 2 / (u * (cold - hot) + hot + cold) - zeroCelInK;
}
