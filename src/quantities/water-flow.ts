import type { Quantity } from "./quantity.ts";

export const waterFlow = {
  name: "water_flow",
  unit: "m3/s",
} as const satisfies Quantity;
