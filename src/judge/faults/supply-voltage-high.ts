import type { Fault } from "../fault.ts";

export const supplyVoltageHigh: Fault = {
  fault: "supply_voltage_high",
  says: "the supply voltage is too high",
  common: 1,
  shows: {
    "upstream:same": 0.3,
    "supply:high": 0.93,
    "supply:sound": 0.02,
    "current:high": 0.12,
    "current:usual": 0.55,
    "shell:shell_hot": 0.12,
    "bus:high": 0.4,
    "sound:noisy": 0.1,
    "winding:balanced": 0.95,
    "insulation:sound": 0.88,
    "board:board_burnt": 0.04,
    "dead:transformer_failed": 0.1,
  },
  proof: [
    {
      check: "supply",
      why: "The same volts at the panel over the day: high at the service is the transformer's tap and the utility's to mend",
      minutes: 10,
      danger: 2,
      fills: ["upstream"],
    },
    {
      check: "supply",
      why: "Where it is high at the service too it is the transformer tap or the utility. Log the volts over a day for them; control transformers and capacitors suffer first",
      minutes: 15,
      danger: 2,
      fills: ["utility"],
    },
  ],
  source: "NEMA MG 1 12.44; frequencies: common practice, no source",
};
