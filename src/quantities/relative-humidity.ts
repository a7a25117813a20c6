import type { Quantity } from "./quantity.ts";

export const relativeHumidity = {
  name: "relative_humidity",
  unit: "%",
} as const satisfies Quantity;
