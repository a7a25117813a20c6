import { liquidDensityKgM3 } from "./liquid-density.ts";
import type { Refrigerant } from "./refrigerant.ts";

/** Source: AHRI Guideline K; 49 CFR 173.304a; from memory. */
const fillShare = 0.8;
/** Cel, 77 F */
const ratingCel = 25;
/** kg/m3, water at 60 F, which water capacity is stated for */
const waterKgM3 = 999;

/**
 * Most refrigerant that a recovery cylinder may hold, in kg: 80 % of its volume in liquid at 77 F.
 *
 * @param waterCapacityKg stamped "WC" on the collar
 * @param refrigerant one of the tables'; a mixture of unknown make must be held lower
 * Error: 0.2 %; printed tables that use a hotter liquid give up to 10 % less.
 * Source: AHRI Guideline K; 49 CFR 173.304a filling limits; from memory.
 * Why: the liquid must find room when the cylinder warms.
 */
export function cylinderFillKg(
  waterCapacityKg: number,
  refrigerant: Refrigerant,
): number | undefined {
  const densityKgM3 = liquidDensityKgM3(refrigerant, ratingCel);
  if (densityKgM3 === undefined || !(waterCapacityKg > 0)) return undefined;
  return (fillShare * waterCapacityKg * densityKgM3) / waterKgM3;
}
