import type { Quantity } from "./quantity.ts";

export const valveSteps = {
  name: "valve_steps",
  unit: "1",
  dimensions: ["steps"],
  units: [
    {
      dimension: "steps",
      figure: "steps",
      factor: 1,
      words: "steps|step|pulses|pulse|pls|stps|stp",
    },
  ],
  words: "valve steps|eev steps|exv steps|pulse count|valve position steps|lev pulses",
  habit: { us: "steps", si: "steps" },
  plausible: [0, 10000],
} as const satisfies Quantity;
