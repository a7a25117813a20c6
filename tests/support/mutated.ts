/** Whether the sources are tried with mutants in them: slower, so that no time is measured then. */
export const mutated = process.env.READBACK_MUTANTS !== undefined;
