/** Resistance of motor windings. */

/** Cel: copper's resistance would vanish at minus this. Source: IEC 60034-1, 8.6.2. */
export const copperConstantCel = 234.5;
/** Cel, conductor-grade aluminium. Source: UL temperature-test clauses. */
export const aluminiumConstantCel = 225;

/** Resistance at another temperature, Ohm. Source: IEC 60034-1, 8.6.2. */
export function windingOhmAt(ohm: number, fromCel: number, toCel: number): number | undefined {
  if (fromCel <= -copperConstantCel) return;
  return (ohm * (copperConstantCel + toCel)) / (copperConstantCel + fromCel);
}

/** Temperature of a winding from its cold and hot resistance, Cel. Source: IEC 60034-1, 8.6.2. */
export function windingCelFromOhm(hotOhm: number, coldOhm: number, coldCel: number) {
  if (!(coldOhm > 0)) return;
  return (hotOhm / coldOhm) * (copperConstantCel + coldCel) - copperConstantCel;
}

/** Run to start of a single-phase motor, Ohm: the sum of the two. Source: series circuit. */
export function runToStartOhm(commonRunOhm: number, commonStartOhm: number): number {
  return commonRunOhm + commonStartOhm;
}

/** What one digit of the meter is worth at a reading, percent. Source: arithmetic. */
export function digitErrorPercent(resolutionOhm: number, ohm: number): number | undefined {
  return ohm > 0 ? (100 * resolutionOhm) / ohm : undefined;
}
