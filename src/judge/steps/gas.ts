import type { Step } from "../step.ts";

/** Looks at the refrigerant and air side. */
export const gasSteps: readonly Step[] = [];
