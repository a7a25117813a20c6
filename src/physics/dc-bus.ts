/** The dc bus of a drive without boost. */

/** Loaded over line volts of a six-pulse rectifier. Source: rectifier theory: 3 sqrt(2) / pi. */
export const loadedBusFactor = (3 * Math.SQRT2) / Math.PI;

/** Bus without load, V dc, from line to line V rms: the peak. Source: rectifier theory. */
export function idleBusV(lineV: number): number {
  return Math.SQRT2 * lineV;
}

/** Bus under load, six-pulse average, V dc. Source: rectifier theory. */
export function loadedBusV(lineV: number): number {
  return loadedBusFactor * lineV;
}

/** Idle band about its peak and loaded band over line volts. Source: common practice, no source. */
export const busBands = { idleShare: 0.03, loadedFrom: 1.3, loadedTo: 1.42 } as const;

/** Time for a bus to bleed down to a voltage, s; undefined without charge or resistor. Source: RC. */
export function bleedDownS(
  fromV: number,
  toV: number,
  bus: { ohm: number; farad: number },
): number | undefined {
  if (!(fromV > 0) || !(toV > 0) || toV > fromV) return;
  return bus.ohm * bus.farad * Math.log(fromV / toV);
}

/** Energy left in a bus, J. Source: E = C V^2 / 2. */
export function busEnergyJ(farad: number, volts: number): number {
  return 0.5 * farad * volts ** 2;
}

/** V; at and above it a part is live until proven dead. Source: 29 CFR 1910.333(a)(1). */
export const touchLimitV = 50;
