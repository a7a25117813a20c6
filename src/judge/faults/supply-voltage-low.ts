import type { Fault } from "../fault.ts";

export const supplyVoltageLow: Fault = {
  fault: "supply_voltage_low",
  says: "the supply voltage is too low",
  common: 2,
  shows: {
    "supply:sags_everywhere": 0.25,
    "supply:low": 0.56,
    "supply:sags": 0.14,
    "supply:sound": 0.02,
    "supply:holds_at_start": 0.005,
    "supply:sags_behind_connection": 0.01,
    "starting:hums": 0.12,
    "starting:overload_trips": 0.25,
    "starting:starts_then_trips": 0.15,
    "contacts:contactor_chatters": 0.25,
    "dimming:lights_dim_at_start": 0.4,
    "shell:shell_hot": 0.12,
    "current:high": 0.4,
    "current:usual": 0.35,
    "bus:low": 0.3,
    "start:held_locked": 0.08,
    "winding:balanced": 0.95,
    "insulation:sound": 0.88,
  },
  proof: [
    {
      check: "supply",
      why: "Volts at the panel and at the unit, running and off: low in both is the transformer tap or the utility, low at the unit alone is wire size or a joint in between",
      minutes: 10,
      danger: 2,
      fills: ["upstream"],
    },
  ],
  source: "NEMA MG 1 12.44; frequencies: common practice, no source",
};
