import type { Quantity } from "./quantity.ts";

export const absorptionRatio = {
  name: "absorption_ratio",
  unit: "1",
} as const satisfies Quantity;
