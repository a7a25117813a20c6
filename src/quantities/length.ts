import type { Quantity } from "./quantity.ts";

export const length = {
  name: "length",
  unit: "m",
} as const satisfies Quantity;
