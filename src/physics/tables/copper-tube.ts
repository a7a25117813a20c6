/** One size of copper tube: outside diameter and wall, both in inches. */
export interface CopperTube {
  readonly outsideIn: number;
  readonly wallIn: number;
}

/**
 * Copper tube for refrigeration, annealed coils up to 1-3/8 in, drawn lengths above.
 * Units: inches. Range: 1/4 to 2-1/8 in. Greatest error: wall tolerance 0.0035 in, 2 % of the bore
 * area at 3/8 in. Source: ASTM B280, standard dimensions; 1-5/8 and 2-1/8 from memory.
 */
export const copperTubes: readonly CopperTube[] = [
  { outsideIn: 0.25, wallIn: 0.03 },
  { outsideIn: 0.3125, wallIn: 0.032 },
  { outsideIn: 0.375, wallIn: 0.032 },
  { outsideIn: 0.5, wallIn: 0.032 },
  { outsideIn: 0.625, wallIn: 0.035 },
  { outsideIn: 0.75, wallIn: 0.035 },
  { outsideIn: 0.875, wallIn: 0.045 },
  { outsideIn: 1.125, wallIn: 0.05 },
  { outsideIn: 1.375, wallIn: 0.055 },
  { outsideIn: 1.625, wallIn: 0.06 },
  { outsideIn: 2.125, wallIn: 0.07 },
];
