import type { Quantity } from "./quantity.ts";

export const staticPressure = {
  name: "static_pressure",
  unit: "Pa",
} as const satisfies Quantity;
