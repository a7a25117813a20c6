import type { Quantity } from "./quantity.ts";

export const current = {
  name: "current",
  unit: "A",
  dimensions: ["current"],
  units: [
    {
      dimension: "current",
      figure: "A",
      factor: 1,
      words: "amp|amps|ampere|amperes|amperage|aamps|amsp|anps|anp|apms|aps|amos|amms|ammps",
      beside: "a",
      heard: "ams|am ps|amp s|ampz|hamps|amps s|amped",
    },
    {
      dimension: "current",
      figure: "A",
      factor: 1,
      words: "aac|amps ac|amp ac|ac amps",
      kind: "ac",
    },
    {
      dimension: "current",
      figure: "A",
      factor: 1,
      words: "adc|amps dc|amp dc|dc amps",
      kind: "dc",
    },
    {
      dimension: "current",
      figure: "mA",
      factor: 1e-3,
      words: "milliamp|milliamps|milli amp|milli amps|milliampere|milliamperes|ma",
      heard: "millie amps|million amps|mill amps",
    },
    {
      dimension: "current",
      figure: "microamp",
      factor: 1e-6,
      words: "microamp|microamps|micro amp|micro amps|ua|µa|uamps|uamp",
    },
    { dimension: "current", figure: "kA", factor: 1e3, words: "ka|kiloamp|kiloamps" },
  ],
  words:
    "current|amp draw|amps|amp|amperage|draw|drawing|draws|amp readings|pulling amps|drew|amping",
  habit: { us: "A", si: "A" },
  plausible: [0, 3000],
} as const satisfies Quantity;
