import type { Fault } from "../fault.ts";

export const compressorOverloadOpen: Fault = {
  fault: "compressor_overload_open",
  says: "the compressor's internal overload is open and will close when it cools",
  common: 3,
  shows: {
    "winding:overload_open": 0.82,
    "winding:all_open": 0.12,
    "winding:open": 0.015,
    "winding:balanced": 0.04,
    "insulation:sound": 0.93,
    "shell:shell_hot": 0.75,
    "shell:shell_cold": 0.01,
    "starting:overload_trips": 0.4,
    "starting:will_not_start": 0.3,
    "starting:hums": 0.05,
    "starting:short_cycles": 0.15,
    "cooled:resets_after_cooling": 0.5,
    "current:none": 0.5,
    "current:usual": 0.05,
    "start:held_locked": 0.1,
  },
  proof: [
    {
      check: "winding",
      why: "Wait for hours or cool the shell with water, power off, then measure the pairs again later: if they close the windings are whole",
      minutes: 60,
      danger: 0,
      fills: ["cooled"],
    },
    {
      check: "circuit_pattern",
      why: "Find what overheated it: superheat and charge, a condenser fan or coil, low volts, the capacitor",
      minutes: 15,
      danger: 2,
      fills: ["overheat_cause"],
    },
  ],
  source: "common practice, no source",
};
