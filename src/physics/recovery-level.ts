import { pascalPerInchOfMercury, standardAtmospherePa } from "./constants.ts";

export type PressureClass = "very_high" | "high" | "medium";

/** kg, 200 lb: the limit of the table's rows */
const largeChargeKg = 90.72;

/** inHg below the standard atmosphere, recovery machines made after 1993-11-15. */
const levelInHg: Readonly<
  Record<PressureClass, { readonly small: number; readonly large: number }>
> = {
  very_high: { small: 0, large: 0 },
  high: { small: 0, large: 10 },
  medium: { small: 10, large: 15 },
};

/**
 * Pressure down to which refrigerant is to be recovered before opening, in Pa absolute.
 *
 * @param pressureClass by liquid pressure at 104 F: medium to 170 psia, high to 355, above very high
 * @param fullChargeKg of the appliance
 * Error: exact. Source: 40 CFR 82.156(a), table 1 (an archived summary prints 10 for the last 15).
 * Why: these are recovery levels, not dehydration targets.
 */
export function recoveryLevelPa(pressureClass: PressureClass, fullChargeKg: number): number {
  const row = levelInHg[pressureClass];
  const inHg = fullChargeKg < largeChargeKg ? row.small : row.large;
  return standardAtmospherePa - inHg * pascalPerInchOfMercury;
}
