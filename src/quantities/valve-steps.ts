import type { Quantity } from "./quantity.ts";

export const valveSteps = {
  name: "valve_steps",
  unit: "1",
} as const satisfies Quantity;
