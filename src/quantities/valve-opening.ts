import type { Quantity } from "./quantity.ts";

export const valveOpening = {
  name: "valve_opening",
  unit: "%",
} as const satisfies Quantity;
