import type { Quantity } from "./quantity.ts";

export const frequency = {
  name: "frequency",
  unit: "Hz",
} as const satisfies Quantity;
