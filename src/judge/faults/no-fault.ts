import type { Fault } from "../fault.ts";

/** What shows where nothing is wrong: hardly ever anything adverse. */
export const noFault: Fault = {
  fault: "no_fault",
  says: "nothing is wrong with what was measured",
  common: 20,
  shows: {
    "insulation:low": 0.03,
    "insulation:very_low": 0.006,
    "insulation:below_floors": 0.001,
    "insulation:ground_fault": 0.0005,
    "insulation:leads_disagree": 0.02,
    "insulation:falling": 0.02,
    "insulation:fallen_far": 0.004,
  },
  proof: [],
  source: "common practice, no source",
};
