import type { Quantity } from "./quantity.ts";

export const temperatureDifference = {
  name: "temperature_difference",
  unit: "K",
} as const satisfies Quantity;
