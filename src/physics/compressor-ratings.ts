/** Ratings on a compressor's plate and what is sized by them. Source: NFPA 70, article 440. */

/** RLA from MCC by the protector's kind: 1.56, 1.40 or 1.44. Source: NFPA 70, 440.52. */
export function ratedLoadA(maximumContinuousA: number, divisor: 1.4 | 1.44 | 1.56): number {
  return maximumContinuousA / divisor;
}

/** MCC from RLA, A. Source: NFPA 70, 440.52. */
export function maximumContinuousA(ratedA: number, divisor: 1.4 | 1.44 | 1.56): number {
  return ratedA * divisor;
}

/** Least conductor ampacity, A. Source: NFPA 70, 440.32: 125 percent. */
export function conductorA(ratedA: number): number {
  return 1.25 * ratedA;
}

/** Largest short-circuit device, A; where it won't start, 225 percent. Source: NFPA 70, 440.22(A). */
export function shortCircuitDeviceA(ratedA: number): { usual: number; most: number } {
  return { usual: 1.75 * ratedA, most: 2.25 * ratedA };
}

/** Least disconnect rating, A. Source: NFPA 70, 440.12(A): 115 percent. */
export function disconnectA(ratedA: number): number {
  return 1.15 * ratedA;
}

/** Input power, W. Source: ac circuit theory. */
export function inputPowerW(volts: number, amps: number, load: { phases: 1 | 3; factor: number }) {
  return (load.phases === 3 ? Math.sqrt(3) : 1) * volts * amps * load.factor;
}
