import type { Quantity } from "./quantity.ts";

export const apparentPower = {
  name: "apparent_power",
  unit: "V.A",
} as const satisfies Quantity;
