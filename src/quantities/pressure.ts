import type { Quantity } from "./quantity.ts";

export const pressure = {
  name: "pressure",
  unit: "Pa",
} as const satisfies Quantity;
