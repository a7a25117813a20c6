import type { Fault } from "../fault.ts";

export const compressorInsulationDegraded: Fault = {
  fault: "compressor_insulation_degraded",
  says: "the compressor's insulation is weakened by moisture, acid or dirt but not broken through",
  common: 3,
  shows: {
    "insulation:ground_fault": 0.015,
    "insulation:below_floors": 0.12,
    "insulation:very_low": 0.35,
    "insulation:low": 0.35,
    "insulation:falling": 0.3,
    "insulation:fallen_far": 0.3,
    "insulation:sound": 0.04,
    "insulation:leads_disagree": 0.04,
  },
  proof: [
    {
      check: "insulation",
      why: "Run the crankcase heater for hours to drive refrigerant out of the oil, then repeat all leads at the same voltage: a value that climbs pointed to refrigerant, one that stays low to moisture or damage. Take an oil sample for acid meanwhile",
      minutes: 30,
      danger: 1,
      fills: ["retest"],
    },
  ],
  source: "common practice, no source; tiers and floors: IEEE 43-2013 12.3 and common practice",
};
