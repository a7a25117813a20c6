import { pascalPerMicron } from "./constants.ts";

/** One timed reading of an isolated system. */
export interface DecayPoint {
  readonly afterS: number;
  readonly absolutePa: number;
}

export type DecayShape = "tight" | "above_hold" | "leak" | "wet" | "short";

/** What the curve of a standing vacuum says. */
export interface Decay {
  readonly shape: DecayShape;
  /** mean rise over the whole stand */
  readonly paPerMin: number;
  /** where the curve comes to rest, where it does */
  readonly restsAtPa?: number;
  readonly lastPa: number;
}

/** Common practice, no source, throughout. */
export const decayLimits = {
  /** a stand that ends at or below this is tight and dry */
  holdPa: 500 * pascalPerMicron,
  /** levelling off between the hold and this is no leak, and no proof of dryness either */
  dryRestPa: 1_000 * pascalPerMicron,
  /** above the vapor pressure of melting ice a curve does not rest for water's sake */
  wetRestPa: 4_600 * pascalPerMicron,
  /** a start above this is no test */
  startPa: 1_000 * pascalPerMicron,
  /** s; a first reading later than this is not where the stand began */
  beginsS: 60,
  /** seconds and readings that a verdict needs */
  shortestS: 300,
  fewestReadings: 3,
} as const;

/** the late slope of a straight rise is the early one; of a curve with half its rise done, half */
const levelledShare = 0.45;

/**
 * Classifies a vacuum decay test: tight and dry, levelled off above the hold, a leak (straight), wet (levels off), too short.
 *
 * @param points seconds since isolation and absolute pressure, in order of time
 * @param holdPa what a stand may end at; the usual one where nobody set another
 * Error: two timed readings can prove a hold or show a rise, never tell a leak from moisture.
 * Source: p = p0 + k t for a leak, p = p1 - (p1 - p0) exp(-t/tau) for moisture (physics); limits
 * common practice, no source.
 * Why: the two models differ in their late slope against their early one, which needs no
 * iteration and no even spacing; a fitted tau would be no better founded on three readings.
 */
export function vacuumDecay(
  points: readonly DecayPoint[],
  holdPa: number = decayLimits.holdPa,
): Decay | undefined {
  const sorted = [...points].sort((a, b) => a.afterS - b.afterS);
  const first = sorted[0];
  const last = sorted.at(-1);
  if (first === undefined || last === undefined || last.afterS <= first.afterS) return undefined;
  const minutes = (last.afterS - first.afterS) / 60;
  const seen = {
    paPerMin: (last.absolutePa - first.absolutePa) / minutes,
    lastPa: last.absolutePa,
  };
  const longEnough = last.afterS - first.afterS >= decayLimits.shortestS;
  if (!longEnough) return { shape: "short", ...seen };
  if (last.absolutePa <= holdPa) return { shape: "tight", ...seen };
  if (sorted.length < decayLimits.fewestReadings || isShallow(first))
    return { shape: "short", ...seen };
  return { ...shapeOfRise(sorted, last), ...seen };
}

/** Began too high for a test; a first look minutes later says nothing of how deep it began. */
export function isShallow({ afterS, absolutePa }: DecayPoint): boolean {
  return afterS < decayLimits.beginsS && absolutePa > decayLimits.startPa;
}

function shapeOfRise(
  sorted: readonly DecayPoint[],
  last: DecayPoint,
): { readonly shape: DecayShape; readonly restsAtPa?: number } {
  const restsAtPa = restPa(sorted);
  if (restsAtPa === undefined) return { shape: "leak" };
  if (restsAtPa < decayLimits.dryRestPa) return { shape: "above_hold", restsAtPa };
  if (last.absolutePa > 2 * decayLimits.wetRestPa) return { shape: "leak" };
  return { shape: "wet", restsAtPa };
}

/** The pressure that the curve tends to, or undefined where it rises on. */
function restPa(sorted: readonly DecayPoint[]): number | undefined {
  const slopes = sorted.slice(1).map((point, index) => slopePaPerS(sorted[index] ?? point, point));
  const early = Math.max(...slopes.slice(0, Math.max(1, Math.floor(slopes.length / 2))));
  const late = slopes.at(-1) ?? 0;
  const last = sorted.at(-1);
  if (last === undefined || early <= 0) return last?.absolutePa;
  const share = late / early;
  if (share > levelledShare) return undefined;
  return last.absolutePa + Math.max(0, late) * remainingS(sorted, share);
}

function slopePaPerS(from: DecayPoint, to: DecayPoint): number {
  return (to.absolutePa - from.absolutePa) / Math.max(1, to.afterS - from.afterS);
}

/** tau of an exponential whose slope fell to `share` between the middles of the first and last gap */
function remainingS(sorted: readonly DecayPoint[], share: number): number {
  const [first, second] = sorted;
  const [beforeLast, last] = sorted.slice(-2);
  if (!first || !second || !beforeLast || !last) return 0;
  const spanS = (beforeLast.afterS + last.afterS - first.afterS - second.afterS) / 2;
  return share <= 0 ? 0 : spanS / -Math.log(share);
}
