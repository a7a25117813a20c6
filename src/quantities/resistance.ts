import type { Quantity } from "./quantity.ts";

export const resistance = {
  name: "resistance",
  unit: "Ohm",
  dimensions: ["resistance"],
  units: [
    {
      dimension: "resistance",
      figure: "kilohm",
      factor: 1e3,
      words: "kilohm|kilohms|kohm|kohms|kiloohm|kiloohms|kilo ohm|kilo ohms|k ohm|k ohms|kω",
      beside: "k",
      heard: "kill ohms|kilo homes|k homes|kay ohms|kay|k owns|kilo home|kilometers ohm",
    },
  ],
  words:
    "resistance|ohms out|ohms out at|ohms out to|ohmed out at|ohmed at|ohms at|ohmed|ohmed out|ohming|res",
  plausible: [0, 1e8],
} as const satisfies Quantity;
