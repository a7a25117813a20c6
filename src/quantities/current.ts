import type { Quantity } from "./quantity.ts";

export const current = {
  name: "current",
  unit: "A",
} as const satisfies Quantity;
