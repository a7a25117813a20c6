import type { Fault } from "../fault.ts";

export const controlVoltageLost: Fault = {
  fault: "control_voltage_lost",
  says: "the control voltage is lost",
  common: 3,
  shows: {
    "protection:control_fuse_open": 0.5,
    "control:no_output": 0.06,
    "control:lost": 0.85,
    "control:low": 0.3,
    "control:present": 0.03,
    "dead:transformer_failed": 0.4,
    // a surge takes the fuse and the transformer before the board
    "storm:struck_by_storm": 0.035,
    "dead:unit_dead": 0.5,
    "dead:display_dead": 0.4,
    "protection:fuse_blown": 0.35,
    "contacts:contactor_not_pulling_in": 0.25,
    "contacts:contactor_chatters": 0.15,
    "cable:cable_damaged": 0.15,
    "mended:control": 0.6,
    "in_vain:control": 0.02,
    "starting:will_not_start": 0.2,
    "safety:safety_open": 0.15,
    "current:none": 0.4,
    "supply:sound": 0.92,
  },
  proof: [
    {
      check: "control_voltage",
      why: "Primary and secondary volts of the transformer, then its fuse; with the fuse open find the short first: thermostat wire, contactor coil, each load by resistance with its wire off",
      minutes: 12,
      danger: 2,
      fills: ["transformer", "low_voltage_short"],
    },
  ],
  source: "common practice, no source",
};
