import type { Quantity } from "./quantity.ts";

export const concentration = {
  name: "concentration",
  unit: "ppm",
} as const satisfies Quantity;
