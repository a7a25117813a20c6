import type { Quantity } from "./quantity.ts";

export const resistance = {
  name: "resistance",
  unit: "Ohm",
} as const satisfies Quantity;
