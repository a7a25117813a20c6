import type { Quantity } from "./quantity.ts";

export const power = {
  name: "power",
  unit: "W",
} as const satisfies Quantity;
