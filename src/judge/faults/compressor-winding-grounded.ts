import type { Fault } from "../fault.ts";

export const compressorWindingGrounded: Fault = {
  fault: "compressor_winding_grounded",
  says: "a compressor winding is shorted to ground",
  common: 4,
  shows: {
    "insulation:ground_fault": 0.86,
    "insulation:below_floors": 0.1,
    "insulation:very_low": 0.02,
    "insulation:low": 0.005,
    "insulation:sound": 0.01,
    "insulation:leads_disagree": 0.01,
  },
  proof: [
    {
      check: "insulation",
      why: "Repeat the three leads to ground at the compressor pins, cable off, terminals clean and dry, 500 V for a minute each: a ground fault in the cable or on a wet terminal looks the same from the contactor",
      minutes: 10,
      danger: 1,
      fills: ["pins"],
    },
  ],
  source: "common practice, no source; floors: IEEE 43-2013 12.3",
};
