import type { Fault } from "../fault.ts";

export const sensorFailed: Fault = {
  fault: "sensor_failed",
  says: "a sensor or its wiring has failed",
  common: 3,
  shows: {
    "sensor:open": 0.4,
    "sensor:off": 0.35,
    "sensor:no_signal": 0.15,
    "sensor:sound": 0.04,
    "probe:sensor_reads_wrong": 0.6,
    "mended:sensor": 0.6,
    "in_vain:sensor": 0.01,
    "drive_code:fault_returns": 0.12,
  },
  proof: [
    {
      check: "sensor",
      why: "Unplug the sensor and measure it at the plug against your own table at a temperature you measured, then wiggle its wire: value and plug tell sensor from board input",
      minutes: 10,
      danger: 1,
      fills: ["sensor", "sensor_plug"],
    },
    {
      check: "sensor",
      why: "Put a known good sensor or a fixed resistor of the table value on the board input: a sane reading condemns the sensor or its wire, the same wrong one the board",
      minutes: 10,
      danger: 1,
      fills: ["sensor_swap"],
    },
  ],
  source: "common practice, no source",
};
