/** Share of the limit in institutional occupancies. Source: ASHRAE 15-2022 section 7. */
export const institutionalShare = 0.5;

/** kg of A1 refrigerant in one circuit below which the room is not limited: 6.6 lb. Source: ASHRAE 15. */
export const exemptChargeKg = 3;

/**
 * Concentration if a circuit's whole charge leaked into one room, in kg/m3.
 *
 * @param chargeKg whole releasable charge of the one independent circuit
 * @param roomM3 volume of the smallest occupied room that it serves or passes
 * Error: exact. Source: ASHRAE 15-2022 sections 7.2 and 7.3 (section numbers from memory).
 * Why: a multi-zone system can empty itself into its smallest room.
 */
export function roomConcentrationKgM3(chargeKg: number, roomM3: number): number | undefined {
  return chargeKg >= 0 && roomM3 > 0 ? chargeKg / roomM3 : undefined;
}
