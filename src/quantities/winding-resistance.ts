import type { Quantity } from "./quantity.ts";

export const windingResistance = {
  name: "winding_resistance",
  unit: "Ohm",
  dimensions: ["resistance"],
  units: [
    {
      dimension: "resistance",
      figure: "ohm",
      factor: 1,
      words: "ohm|ohms|ω|ohmz",
      heard: "homes|owns|olms|omes|oms|om|alms|holmes|ohhms|oames|homs|olm|omhs|ohns",
    },
    {
      dimension: "resistance",
      figure: "milliohm",
      factor: 1e-3,
      words: "milliohm|milliohms|milli ohm|milli ohms",
      heard: "milli homes|milli home|milly ohms",
    },
    {
      dimension: "resistance",
      figure: "microohm",
      factor: 1e-6,
      words: "microohm|microohms|micro ohm|micro ohms|uω|uohm|uohms",
    },
  ],
  words:
    "winding|windings|winding resistance|coil to coil|phase to phase ohms|winding ohms|micro ohm meter|microohm meter|milliohm meter|milli ohm meter|wdg|wdgs|pairs",
  habit: { us: "ohm", si: "ohm" },
  plausible: [0, 2000],
} as const satisfies Quantity;
