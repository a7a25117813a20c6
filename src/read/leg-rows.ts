/** The three of a kind that terminals and legs are called by, in their order. */
export const legRows: readonly (readonly string[])[] = [
  ["L1", "L2", "L3"],
  ["T1", "T2", "T3"],
  ["U", "V", "W"],
  ["phase A", "phase B", "phase C"],
];

/** Leads by their numbers, whatever stands on them. */
export const leads: readonly string[] = ["lead 1", "lead 2", "lead 3"];
