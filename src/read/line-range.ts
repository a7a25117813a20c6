/** From and to, both within. */
export type Range = readonly [number, number];

/** F of the pipes of both sides while gas runs in them. Common practice, no source. */
export const lineF = { suction: [-40, 95], liquid: [35, 150] } as const;

/** Cel of each side's pipe in a metric house. Common practice, no source. */
export const lineCel = { suction: [-45, 40], discharge: [30, 150], liquid: [0, 70] } as const;

/** How many times its line's F a gauge shows in psi at least, where nothing else tells them apart. Common practice, no source. */
export const gaugeFarOver = 1.4;

export function within(value: number, [least, most]: Range): boolean {
  return value >= least && value <= most;
}
