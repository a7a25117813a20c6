import type { Fault } from "../fault.ts";

export const startAgainstPressure: Fault = {
  fault: "start_against_pressure",
  says: "it tried to start against unequal pressures",
  common: 2,
  attempt: true,
  where: { drive: "line" },
  shows: {
    "start_pressures:pressures_unequal": 0.75,
    "start_pressures:pressures_equal": 0.02,
    "start:locked_once": 0.45,
    "start:held_locked": 0.3,
    "start:line_start": 0.1,
    "ramp:limit": 0.1,
    "starting:hums": 0.2,
    "starting:starts_then_trips": 0.3,
    "starting:overload_trips": 0.3,
    "starting:short_cycles": 0.3,
    "liquid:was_without_power": 0.12,
    "cooled:resets_after_cooling": 0.15,
    "well:runs_normally": 0.2,
    "winding:balanced": 0.96,
    "insulation:sound": 0.9,
    "capacitor:good": 0.9,
  },
  proof: [
    {
      check: "start_current",
      why: "Wait until both gauges are equal, then one start on the clamp: a free start proves pressure and no seized rotor. Then the delay timer, the thermostat's short cycling and a hard start kit",
      minutes: 10,
      danger: 2,
      fills: ["equal_start"],
    },
  ],
  source: "common practice, no source",
};
