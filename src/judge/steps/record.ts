import type { Step } from "../step.ts";

/** What is left where the cause was mended and the machine read again. */
export const record: Step = {
  check: "commissioning",
  why: "Let it run through a cycle or two, then note volts, amps, pressures, both line temperatures and the split: the next call compares with that",
  minutes: 20,
  danger: 1,
  fills: [],
};
