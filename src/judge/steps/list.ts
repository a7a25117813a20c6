import type { Step } from "../step.ts";
import { electricalSteps } from "./electrical.ts";
import { gasSteps } from "./gas.ts";

/** What can be looked at next, whatever the fault. */
export const steps: readonly Step[] = [...electricalSteps, ...gasSteps];
