import type { Quantity } from "./quantity.ts";

export const voltage = {
  name: "voltage",
  unit: "V",
} as const satisfies Quantity;
