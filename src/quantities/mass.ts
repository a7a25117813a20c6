import type { Quantity } from "./quantity.ts";

export const mass = {
  name: "mass",
  unit: "kg",
} as const satisfies Quantity;
