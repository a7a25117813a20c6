import type { Quantity } from "./quantity.ts";

export const vacuum = {
  name: "vacuum",
  unit: "Pa",
} as const satisfies Quantity;
