import type { Fault } from "../fault.ts";

export const branchValveStuck: Fault = {
  fault: "branch_valve_stuck",
  says: "a branch box valve does not change over",
  common: 1.2,
  where: { state: "running", machine: "branched" },
  shows: {
    "shared:branch": 0.5,
    "branch:stuck": 0.85,
    "branch:follows": 0.15,
    // its valve can't be driven
    "valve_coil:branch_open": 0.15,
    "valve_look:valve_stuck": 0.25,
  },
  proof: [
    {
      check: "valve",
      why: "At that port: command voltage at the coil, coil swapped with a neighbor, pipe temperatures before and after. Command there and coil good leaves the valve body",
      minutes: 15,
      danger: 2,
      fills: ["branch"],
    },
    {
      check: "valve",
      why: "Coil off and a test magnet on the stem: does the pipe's temperature answer? A body that stays still, tapped lightly once, is stuck; it is changed only with that section isolated, recovered and swept with nitrogen",
      minutes: 15,
      danger: 2,
      fills: ["branch_body"],
    },
  ],
  source: "common practice, no source",
};
