import type { Quantity } from "./quantity.ts";

export const superheat = {
  name: "superheat",
  unit: "K",
} as const satisfies Quantity;
