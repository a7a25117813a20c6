import type { Fault } from "../fault.ts";

export const defrostFailed: Fault = {
  fault: "defrost_failed",
  says: "a coil is not defrosted",
  common: 1.5,
  where: { state: "running", machine: "defrosting" },
  shows: {
    "safety:low_pressure": 0.09,
    "forced_defrost:works": 0.3,
    "indoor_air:ice_on_indoor_coil": 0.25,
    "indoor_air:ice_on_cold_coil": 0.5,
    "outdoor_ice:ice_on_outdoor_coil": 0.7,
    "outdoor_ice:defrost_not_working": 0.6,
    "defrosting:fails": 0.9,
    "mended:defrost": 0.7,
    "suction:low": 0.7,
    "suction:usual": 0.29,
    "superheat:none": 0.2,
    "superheat:usual": 0.7,
    "reversing_look:reversing_valve_stuck": 0.05,
    "fans:outdoor_fan_not_turning": 0.06,
  },
  proof: [
    {
      check: "sensor",
      why: "Force a defrost: does the reversing valve change over, the outdoor fan stop and the coil clear? Then coil sensor ohms at its temperature, and the board or timer",
      minutes: 15,
      danger: 1,
      fills: ["forced_defrost"],
    },
    {
      check: "sensor",
      why: "Where it defrosts when forced, look at what starts it: coil sensor or thermostat, its ohms or contact at the coil's temperature against your own table and its clip on the pipe, then the board's or the clock's count",
      minutes: 10,
      danger: 1,
      fills: ["defrost_sensor"],
      where: { machine: "reversing" },
    },
    {
      check: "sensor",
      why: "On an electric defrost: volts and amps at the heaters while it runs one, each heater's ohms with its wires off, termination switch and heater contactor; an open heater is found that way before a board is",
      minutes: 10,
      danger: 2,
      fills: ["defrost_heaters"],
    },
  ],
  source: "common practice, no source",
};
