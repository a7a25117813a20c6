import type { Quantity } from "./quantity.ts";

export const rotationalSpeed = {
  name: "rotational_speed",
  unit: "1/min",
} as const satisfies Quantity;
