import type { Fault } from "../fault.ts";

export const controlBoardFailed: Fault = {
  fault: "control_board_failed",
  says: "a control board has failed",
  common: 2.5,
  shows: {
    "swap:fan_runs_elsewhere": 0.3,
    "shared:branch": 0.12,
    "control:no_output": 0.5,
    "board:board_burnt": 0.35,
    "board:board_suspected": 0.4,
    "board:main_suspected": 0.5,
    "communication:pulled_down": 0.55,
    "communication:dead_part": 0.1,
    "network:communication_returns_unplugged": 0.4,
    "network:communication_lost": 0.15,
    "network:dead_unloaded": 0.5,
    "control:present": 0.4,
    "control:lost": 0.05,
    "dead:display_dead": 0.2,
    "dead:unit_dead": 0.15,
    "starting:will_not_start": 0.25,
    "call:calling": 0.3,
    // most that fail leave the machine standing
    "current:none": 0.35,
    "current:usual": 0.3,
    "contacts:contactor_not_pulling_in": 0.15,
    "mended:board": 0.6,
    "in_vain:board": 0.01,
    "storm:struck_by_storm": 0.12,
    "water:water_inside": 0.06,
  },
  proof: [
    {
      check: "control_voltage",
      why: "24 V into the board, its fuse, every safety closed, a call present, and no output: only then the board. Unplug its loads one by one first",
      minutes: 12,
      danger: 2,
      fills: ["board_io"],
    },
  ],
  source: "common practice, no source",
};
