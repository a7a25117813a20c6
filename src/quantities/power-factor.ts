import type { Quantity } from "./quantity.ts";

export const powerFactor = {
  name: "power_factor",
  unit: "1",
} as const satisfies Quantity;
