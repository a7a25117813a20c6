/**
 * Insulation resistance of windings. Source where not said otherwise: IEEE Std 43-2013,
 * Recommended Practice for Testing Insulation Resistance of Electric Machinery.
 */

/** Cel, the temperature that limits are stated at. Source: IEEE 43-2013, 6.3. */
export const insulationBaseCel = 40;

/** Cel, where the thermosetting rule holds. Source: IEEE 43-2013, 6.3 (from memory). */
export const thermosettingRangeCel = { from: 10, to: 85 } as const;

/** Ohm, 1 minute, at 40 Cel: random-wound and all below 1 kV. Source: IEEE 43-2013, 12.3. */
export const insulationFloorOhm = 5e6;

/** Ohm at 1 minute above which the index says nothing. Source: IEEE 43-2013, 12.2.1. */
export const indexLimitOhm = 5e9;

/**
 * Factor that turns a reading into its value at 40 Cel, thermoplastic rule (halves per 10 K).
 * @param windingCel winding temperature, any
 * Source: IEEE 43-2013, 6.3.
 */
export function halvingFactor(windingCel: number): number {
  return 0.5 ** ((insulationBaseCel - windingCel) / 10);
}

/**
 * The same by the thermosetting rule, much flatter; undefined outside 10 to 85 Cel.
 * Source: IEEE 43-2013, 6.3 (constants from memory).
 */
export function thermosettingFactor(windingCel: number): number | undefined {
  if (windingCel < thermosettingRangeCel.from || windingCel > thermosettingRangeCel.to) return;
  const constant = windingCel <= insulationBaseCel ? 1245 : 4230;
  return Math.exp(-constant * (1 / (windingCel + 273) - 1 / 313));
}

export type WindingKind = "random_wound" | "form_wound" | "old_or_field";

/**
 * Recommended minimum at 40 Cel, Ohm.
 * @param ratedV terminal to terminal, V rms
 * Source: IEEE 43-2013, 12.3: 5 megohm random-wound and form-wound below 1 kV, 100 megohm
 * form-wound after about 1970, kV + 1 for older windings and fields.
 */
export function minimumInsulationOhm(kind: WindingKind, ratedV: number): number {
  if (kind === "old_or_field") return (ratedV / 1000 + 1) * 1e6;
  if (kind === "form_wound" && ratedV >= 1000) return 100e6;
  return insulationFloorOhm;
}

/** Test voltage by rating, V dc. Source: IEEE 43-2013, table 1. */
const testVoltages = [
  { ratedBelowV: 1000, from: 500, to: 500 },
  { ratedBelowV: 2501, from: 500, to: 1000 },
  { ratedBelowV: 5001, from: 1000, to: 2500 },
  { ratedBelowV: 12001, from: 2500, to: 5000 },
  { ratedBelowV: Number.POSITIVE_INFINITY, from: 5000, to: 10000 },
] as const;

/** Test voltage, V dc, for a winding rated `ratedV` (V rms, above 0); undefined for none. */
export function testVoltageRangeV(ratedV: number): { from: number; to: number } | undefined {
  if (!(ratedV > 0)) return;
  const row = testVoltages.find((one) => ratedV < one.ratedBelowV);
  return row === undefined ? undefined : { from: row.from, to: row.to };
}

/** Smallest polarization index by thermal class. Source: IEEE 43-2013, 12.2. */
const smallestIndexes: Readonly<Record<string, number>> = { A: 1.5, B: 2, F: 2, H: 2 };

/** Smallest polarization index for class A, B, F, H; undefined for another. */
export function minimumPolarizationIndex(windingClass: string): number | undefined {
  return smallestIndexes[windingClass.toUpperCase()];
}

export type AbsorptionBand = "bad" | "questionable" | "borderline" | "good" | "excellent";

/**
 * Band of an absorption ratio (60 s over 30 s). Source: common practice, no source (the same
 * table stands in several guides; no standard sets it).
 */
export function absorptionBand(ratio: number): AbsorptionBand {
  if (ratio < 1) return "bad";
  if (ratio < 1.25) return "questionable";
  if (ratio < 1.4) return "borderline";
  return ratio <= 1.6 ? "good" : "excellent";
}

/** Resistance of leakage paths side by side, Ohm, each above 0. Source: Ohm's law. */
export function parallelOhm(resistances: readonly number[]): number | undefined {
  if (resistances.length === 0 || resistances.some((one) => !(one > 0))) return;
  return 1 / resistances.reduce((sum, one) => sum + 1 / one, 0);
}

/** Leakage current, A. Source: Ohm's law. */
export function leakageA(testV: number, resistanceOhm: number): number | undefined {
  return resistanceOhm > 0 ? testV / resistanceOhm : undefined;
}

/** A value at 40 Cel as it would be at 20 Cel by the halving rule. Source: the halving rule. */
export function at20CelFromAt40Cel(at40CelOhm: number): number {
  return at40CelOhm / halvingFactor(20);
}

/** Least time to keep a tested winding grounded, s. Source: IEEE 43-2013, 4 and 5.5: four times. */
export function dischargeTimeS(testedForS: number): number {
  return 4 * testedForS;
}

export type TrendBand = "steady" | "falling" | "fallen_far";

/** Band of a reading over the unit's earlier one. Source: common practice, no source. */
export function trendBand(ratio: number): TrendBand {
  if (ratio >= 0.5) return "steady";
  return ratio >= 0.1 ? "falling" : "fallen_far";
}
