import { celFromFahrenheit, kelvinPerFahrenheit } from "../physics/constants.ts";
import type { Application } from "./application.ts";

/** K from a difference in Fahrenheit, the unit that the trade's figures are round in. */
const F = kelvinPerFahrenheit;

/** K that probe and gauge may be off together. Common practice, no source. */
export const probesK = 2.8;
/** Times that the head of a running circuit stands over its suction at least, gauge; nearer to each other they are not told apart. Common practice, no source. */
export const liftShare = 1.3;

/** A usual band; below it low, above it high. */
export interface Band {
  readonly from: number;
  readonly to: number;
}

export type Verdict = "low" | "usual" | "high";

export function verdictOf(value: number, band: Band): Verdict {
  if (value < band.from) return "low";
  return value > band.to ? "high" : "usual";
}

/**
 * Usual figures of single-speed circuits, in K, where the plate says nothing.
 * Source: common practice, no source, throughout; the plate's own figures outweigh them.
 */
export const bands = {
  /** below it liquid may reach the compressor */
  floodbackK: 3 * F,
  superheat: {
    expansion_valve: { from: 5 * F, to: 25 * F },
    fixed_orifice: { from: 5 * F, to: 30 * F },
  },
  /** either side of the target for a fixed orifice. ANSI/ACCA 5 QI 2015, from memory */
  targetToleranceK: 5 * F,
  /** either side of the plate's subcooling. ANSI/ACCA 5 QI 2015, from memory */
  plateToleranceK: 3 * F,
  subcooling: { from: 3 * F, to: 18 * F },
  /** thin, but a column of liquid */
  thinK: 6 * F,
  /** condensing over outdoor air; high-efficiency coils 10 F, small old ones 30 F */
  overOutdoor: { from: 9.5 * F, to: 32 * F },
  /** return air over evaporating; 35 F at 400 cfm a ton */
  underReturn: { from: 20 * F, to: 43 * F },
  /** box air over evaporating, walk-in coolers and freezers */
  underBox: { from: 6.5 * F, to: 20 * F },
  /** a cabinet has a small coil for its load */
  underReachIn: { from: 6.5 * F, to: 30 * F },
  /** leaving chilled water over evaporating */
  underWater: { from: 1 * F, to: 14 * F },
  /** heating: outdoor air over evaporating, condensing over return air */
  underOutdoor: { from: 4 * F, to: 30 * F },
  overReturn: { from: 14 * F, to: 55 * F },
} as const;

/** Usual evaporating temperatures in Cel, where no air temperature was read. Common practice. */
export const evaporatingBand: Readonly<Partial<Record<Application, Band>>> = {
  comfort: { from: celFromFahrenheit(34), to: celFromFahrenheit(52) },
  cooler: { from: celFromFahrenheit(12), to: celFromFahrenheit(34) },
  freezer: { from: celFromFahrenheit(-40), to: celFromFahrenheit(0) },
};

/** Usual condensing temperatures in Cel of air-cooled machines, where no outdoor air was read. Common practice. */
export const condensingBand: Readonly<Partial<Record<Application, Band>>> = {
  comfort: { from: celFromFahrenheit(72), to: celFromFahrenheit(129) },
  cooler: { from: celFromFahrenheit(68), to: celFromFahrenheit(129) },
  freezer: { from: celFromFahrenheit(68), to: celFromFahrenheit(129) },
};

/** Compression ratios. Source: common practice, no source. */
export const ratioBand: Readonly<Record<Application, Band>> = {
  comfort: { from: 1.9, to: 5 },
  multi_zone: { from: 1.3, to: 8 },
  cooler: { from: 2.4, to: 9 },
  freezer: { from: 3.5, to: 16 },
  chiller: { from: 1.6, to: 5 },
};

/** Air split in cooling where no wet bulb was read. Source: common practice, no source. */
export const splitBand: Band = { from: 14 * F, to: 25 * F };

/** either side of the target split. Source: California Title 24 RA3.2, from memory. */
export const splitToleranceK = 4 * F;
