import { pascalPerPsi } from "./constants.ts";
import { nitrogenPaAtConstantVolume } from "./nitrogen.ts";

/** Common practice, no source: what a hold may lose and still be called explained. */
const leastAllowedPa = 2 * pascalPerPsi;
const resolutionsAllowed = 2;
const shareAllowed = 0.005;

/** Absolute pressure and gas temperature at one end of a hold. */
export interface HoldPoint {
  readonly absolutePa: number;
  readonly cel: number;
}

/**
 * What a nitrogen hold lost once the temperature is taken out, in Pa; positive is a loss.
 *
 * @param start absolute pressure and gas temperature when the hold began
 * @param end the same when it ended
 * Error: 0.004 % of the pressure from the gas, 0.35 % for each K that a temperature is off.
 * Source: real gas at constant volume, see `nitrogen.ts`.
 * Why: a cold night takes 20 psi off a tight system.
 */
export function compensatedDropPa(start: HoldPoint, end: HoldPoint): number | undefined {
  const expectedPa = nitrogenPaAtConstantVolume(start.absolutePa, start.cel, end.cel);
  return expectedPa === undefined ? undefined : expectedPa - end.absolutePa;
}

/**
 * The change that a hold may show without a leak, in Pa: the greatest of 2 psi, two steps of the
 * gauge, and half a percent of the absolute pressure.
 *
 * @param startPa absolute
 * @param resolutionPa the gauge's smallest step
 * Source: common practice, no source. Why: less than that is the instrument, not the pipe.
 */
export function allowedChangePa(startPa: number, resolutionPa: number): number {
  return Math.max(leastAllowedPa, resolutionsAllowed * resolutionPa, shareAllowed * startPa);
}

/**
 * The part of a change that rounded readings prove, in Pa: what is left of it when every reading is
 * moved by half its last digit towards no change.
 *
 * @param dropPa compensated drop, either sign
 * @param uncertainPa half steps of both gauges, and of both temperatures through the gas law
 * Error: none of its own. Source: interval arithmetic.
 * Why: "29 C" and "41.5 bar" hide 0.2 bar between them at 40 bar, which is no leak and no gain.
 */
export function provenDropPa(dropPa: number, uncertainPa: number): number {
  return Math.sign(dropPa) * Math.max(0, Math.abs(dropPa) - uncertainPa);
}
