import type { Quantity } from "./quantity.ts";

export const capacitance = {
  name: "capacitance",
  unit: "F",
} as const satisfies Quantity;
