import type { Quantity } from "./quantity.ts";

export const subcooling = {
  name: "subcooling",
  unit: "K",
} as const satisfies Quantity;
