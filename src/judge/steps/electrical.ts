import type { Step } from "../step.ts";

/** Looks at the electrical side. */
export const electricalSteps: readonly Step[] = [
  {
    check: "insulation",
    why: "Lock out, prove it dead, lift the leads, then megohm each lead to ground at 500 V for a minute: it tells a grounded or wet winding from everything else",
    minutes: 10,
    danger: 1,
    fills: ["insulation"],
  },
];
