import type { Fault } from "../fault.ts";

export const communicationFailed: Fault = {
  fault: "communication_failed",
  says: "the communication between units has failed",
  common: 2.5,
  shows: {
    "shared:branch": 0.2,
    "communication:dead_part": 0.6,
    "communication:pulled_down": 0.3,
    "communication:alive": 0.05,
    "network:communication_lost": 0.7,
    "network:dead_unloaded": 0.0003,
    "network:communication_returns_unplugged": 0.3,
    "cable:cable_damaged": 0.2,
    "control:present": 0.9,
    "supply:sound": 0.9,
  },
  proof: [
    {
      check: "communication",
      why: "Volts on the pair at each unit along the line, power on at each: the break or short lies between the last good and the first bad one. Look there for a splice, a rubbed or chewed wire, a loose terminal or swapped polarity. Then unplug that unit and see whether the pair returns; its power and its board are next",
      minutes: 10,
      danger: 2,
      fills: ["communication_walk"],
    },
  ],
  source: "common practice, no source",
};
