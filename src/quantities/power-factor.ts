import type { Quantity } from "./quantity.ts";

export const powerFactor = {
  name: "power_factor",
  unit: "1",
  dimensions: ["ratio"],
  units: [],
  words: "power factor|pwr factor|pwr fctr|power fctr|pow factor|input power factor|pf|cos phi|p f",
  plausible: [-1, 1.0001],
} as const satisfies Quantity;
