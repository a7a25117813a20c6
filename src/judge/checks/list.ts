import type { Check } from "../check.ts";
import { insulation } from "./insulation.ts";

/** Every check, in the order of the work; a new one is its file and a line here. */
export const checks: readonly Check[] = [
  // electrical side
  insulation,
  // refrigerant and air side
];
