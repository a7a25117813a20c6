import type { Step } from "../step.ts";
import { electricalSteps } from "./electrical.ts";
import { gasSteps } from "./gas.ts";
import { record } from "./record.ts";

/** What can be looked at next, whatever the fault. */
export const steps: readonly Step[] = [...electricalSteps.map(notUnderTest), ...gasSteps, record];

/** Nothing is started or meggered while the circuit stands under vacuum or nitrogen. */
function notUnderTest(step: Step): Step {
  return { ...step, where: { ...step.where, state: "running" } };
}
