import type { Quantity } from "./quantity.ts";

export const polarizationIndex = {
  name: "polarization_index",
  unit: "1",
  dimensions: ["ratio"],
  units: [],
  words:
    "pi|p i|polarization index|polarisation index|polarization|polarisation|pie|polarity index|p.i.",
  plausible: [0.1, 30],
} as const satisfies Quantity;
