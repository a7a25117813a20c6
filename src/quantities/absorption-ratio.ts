import type { Quantity } from "./quantity.ts";

export const absorptionRatio = {
  name: "absorption_ratio",
  unit: "1",
  dimensions: ["ratio"],
  units: [],
  words: "dar|dielectric absorption ratio|dielectric absorption|absorption ratio|absorption|d a r",
  plausible: [0.1, 20],
} as const satisfies Quantity;
