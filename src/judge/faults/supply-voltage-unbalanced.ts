import type { Fault } from "../fault.ts";

export const supplyVoltageUnbalanced: Fault = {
  fault: "supply_voltage_unbalanced",
  says: "the supply's phases are unbalanced",
  common: 1.5,
  where: { phases: 3 },
  shows: {
    "upstream:same": 0.3,
    "supply:unbalanced": 0.72,
    "supply:unbalanced_slightly": 0.2,
    "supply:sound": 0.03,
    "supply:phase_lost": 0.01,
    "supply:low": 0.02,
    "current:unbalanced_by_supply": 0.62,
    "current:unbalanced": 0.2,
    "current:unbalanced_by_motor": 0.04,
    "current:high": 0.04,
    "current:usual": 0.25,
    "starting:overload_trips": 0.2,
    "shell:shell_hot": 0.12,
    "winding:balanced": 0.95,
    "insulation:sound": 0.88,
    "monitor:phase_monitor_open": 0.15,
  },
  proof: [
    {
      check: "supply",
      why: "The same three voltages at the panel and with the unit off: unbalanced there too means the feeder or the utility, even there means a joint or load between",
      minutes: 10,
      danger: 2,
      fills: ["upstream"],
    },
    {
      check: "supply",
      why: "Where it is uneven at the service too it is the utility, or single-phase load on one leg. Log all three with the building loaded and unloaded for them; derate or stop the motor by the percentage meanwhile",
      minutes: 15,
      danger: 2,
      fills: ["utility"],
    },
  ],
  source: "NEMA MG 1 14.36; frequencies: common practice, no source",
};
