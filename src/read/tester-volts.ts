/** Volts that an insulation tester for motors is set to; IEEE 43-2013, table 1, as far as meters carry them. */
export const testerVolts: ReadonlySet<number> = new Set([250, 500, 1000, 2500, 5000]);
