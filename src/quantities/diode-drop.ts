import type { Quantity } from "./quantity.ts";

export const diodeDrop = {
  name: "diode_drop",
  unit: "V",
} as const satisfies Quantity;
