import type { Quantity } from "./quantity.ts";

export const duration = {
  name: "duration",
  unit: "s",
} as const satisfies Quantity;
