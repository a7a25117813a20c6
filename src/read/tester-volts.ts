/**
 * Volts that an insulation tester for motors is set to: what such meters carry, common practice, no source;
 * 500 to 5000 V are also what IEEE 43-2013, table 1, names (from memory).
 */
export const testerVolts: ReadonlySet<number> = new Set([250, 500, 1000, 2500, 5000]);
