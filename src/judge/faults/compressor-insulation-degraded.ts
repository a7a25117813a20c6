import type { Fault } from "../fault.ts";

export const compressorInsulationDegraded: Fault = {
  fault: "compressor_insulation_degraded",
  says: "the compressor's insulation is weakened by moisture, acid or dirt but not broken through",
  common: 3,
  shows: {
    "insulation:ground_fault": 0.012,
    "insulation:ground_fault_unproven": 0.06,
    "insulation:below_floors": 0.12,
    "insulation:very_low": 0.35,
    "insulation:low": 0.33,
    "insulation:falling": 0.3,
    "insulation:fallen_far": 0.35,
    "insulation:sound": 0.05,
    "insulation:leads_disagree": 0.03,
    "polarization:falls": 0.3,
    "winding:balanced": 0.95,
    "burning:acid_found": 0.1,
    "burning:oil_black": 0.08,
    "burning:no_acid": 0.05,
    "water:water_inside": 0.05,
  },
  proof: [
    {
      check: "insulation",
      why: "Warm the crankcase with its heater for hours, then repeat all leads dry at the same voltage: a value that climbs pointed to refrigerant in the oil, one that stays low to moisture or damage. Take an oil sample for acid and moisture meanwhile, and plan a drier change",
      minutes: 30,
      danger: 1,
      fills: ["retest"],
    },
  ],
  source: "common practice, no source; tiers and floors: IEEE 43-2013 12.3 and common practice",
};
