import type { Quantity } from "./quantity.ts";

export const apparentPower = {
  name: "apparent_power",
  unit: "V.A",
  dimensions: ["apparent_power"],
  units: [
    {
      dimension: "apparent_power",
      figure: "kVA",
      factor: 1e3,
      words: "kva|kilovoltampere|kilovolt amps|kilovolt amperes|k v a",
    },
    {
      dimension: "apparent_power",
      figure: "VA",
      factor: 1,
      words: "va|volt amps|volt amp|volt amperes",
    },
  ],
  words: "apparent power",
  plausible: [0, 1e7],
} as const satisfies Quantity;
