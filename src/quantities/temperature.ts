import type { Quantity } from "./quantity.ts";

export const temperature = {
  name: "temperature",
  unit: "Cel",
} as const satisfies Quantity;
