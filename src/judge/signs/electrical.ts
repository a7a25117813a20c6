import type { SignGroup } from "../sign.ts";

const ours = "common practice, no source";

/** What the electrical tests show when the cause lies elsewhere. */
export const electricalSigns: readonly SignGroup[] = [
  {
    group: "insulation",
    background: {
      sound: 0.86,
      low: 0.06,
      very_low: 0.02,
      below_floors: 0.006,
      ground_fault: 0.004,
      leads_disagree: 0.02,
      falling: 0.02,
      fallen_far: 0.01,
    },
    source: ours,
  },
];
