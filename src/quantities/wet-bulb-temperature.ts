import type { Quantity } from "./quantity.ts";

export const wetBulbTemperature = {
  name: "wet_bulb_temperature",
  unit: "Cel",
} as const satisfies Quantity;
