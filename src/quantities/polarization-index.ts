import type { Quantity } from "./quantity.ts";

export const polarizationIndex = {
  name: "polarization_index",
  unit: "1",
} as const satisfies Quantity;
