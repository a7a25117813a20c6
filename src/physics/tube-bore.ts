import { metrePerInch } from "./constants.ts";
import { copperTubes } from "./tables/copper-tube.ts";

/** in; closer than this a said size is a tube's */
const sizeToleranceIn = 0.02;

/**
 * Cross-section of a copper tube's bore, in m2.
 *
 * @param outsideIn nominal outside diameter in inches, 1/4 to 2-1/8
 * Error: 2 % from the wall's tolerance; drawn 3/8 to 3/4 in tube has another wall (2 to 4 % less
 * bore, 3/8 in 2.5 % more). Source: ASTM B280.
 * Why: line sets are annealed coils; a size between two of the table is a mistake to ask about.
 */
export function tubeBoreM2(outsideIn: number): number | undefined {
  const tube = copperTubes.find((each) => Math.abs(each.outsideIn - outsideIn) <= sizeToleranceIn);
  if (tube === undefined) return undefined;
  return (Math.PI / 4) * ((tube.outsideIn - 2 * tube.wallIn) * metrePerInch) ** 2;
}
