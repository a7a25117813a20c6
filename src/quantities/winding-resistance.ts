import type { Quantity } from "./quantity.ts";

export const windingResistance = {
  name: "winding_resistance",
  unit: "Ohm",
} as const satisfies Quantity;
