import type { Quantity } from "./quantity.ts";

export const mass = {
  name: "mass",
  unit: "kg",
  dimensions: ["mass"],
  units: [
    {
      dimension: "mass",
      figure: "lb",
      factor: 0.45359237,
      words: "lb|lbs|lbm|pound|pounds",
      beside: "#",
      heard: "pound s|pouns|lb s|pounds s|ponds",
    },
    {
      dimension: "mass",
      figure: "oz",
      factor: 0.028349523125,
      words: "oz|ozs|ounce|ounces",
      heard: "oun ces|ounce s|oz s",
    },
    {
      dimension: "mass",
      figure: "kg",
      factor: 1,
      words: "kg|kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes|kilog|kilogramms|kgm",
      heard: "kilo s|key lows|killows|keelos|kilo grams|kill o s",
    },
    {
      dimension: "mass",
      figure: "g",
      factor: 1e-3,
      words: "gram|grams|gramme|grammes|gr|grm|grms|gm|gms",
      beside: "g",
      heard: "grahams|graham",
    },
    { dimension: "mass", figure: "mg", factor: 1e-6, words: "mg|milligram|milligrams" },
    { dimension: "mass", figure: "t", factor: 1000, words: "tonne|tonnes|metric ton|metric tons" },
    { dimension: "mass", figure: "microgram", factor: 1e-9, words: "ug|µg|microgram|micrograms" },
  ],
  words: "mass|weight|charge weight|weighs",
  plausible: [0, 5000],
} as const satisfies Quantity;
