import type { Quantity } from "./quantity.ts";

export const insulationResistance = {
  name: "insulation_resistance",
  unit: "Ohm",
} as const satisfies Quantity;
