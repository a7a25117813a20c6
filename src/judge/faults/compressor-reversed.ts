import type { Fault } from "../fault.ts";

export const compressorReversed: Fault = {
  fault: "compressor_reversed",
  says: "a three-phase compressor runs backward",
  common: 1,
  where: { phases: 3, drive: "line" },
  shows: {
    "sequence:phase_sequence_reversed": 0.5,
    "sequence:line_work_done": 0.45,
    "sound:runs_backward": 0.6,
    "sound:noisy": 0.55,
    "sound:no_pumping": 0.4,
    "sound:vibrates": 0.15,
    "start_pressures:pressures_equal": 0.2,
    "current:light": 0.7,
    "current:usual": 0.1,
    "current:high": 0.03,
    "current:line_dead": 0.002,
    "well:runs_normally": 0.01,
    "supply:sound": 0.93,
    "winding:balanced": 0.95,
    "insulation:sound": 0.9,
    "start:line_start": 0.85,
    "start:held_locked": 0.004,
  },
  proof: [
    {
      check: "running_current",
      why: "Check the phase sequence with a rotation meter, then swap two legs at the contactor, dead and locked out: current and pressures come up at once if it ran backward",
      minutes: 10,
      danger: 2,
      fills: ["rotation_tried"],
    },
  ],
  source: "common practice, no source",
};
