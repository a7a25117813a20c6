import type { Quantity } from "./quantity.ts";

export const power = {
  name: "power",
  unit: "W",
  dimensions: ["power"],
  units: [
    {
      dimension: "power",
      figure: "kW",
      factor: 1e3,
      words: "kw|kilowatt|kilowatts|kilo watt|kilo watts",
      heard: "kill a watts|kilo what|kilo whats|kilowats",
    },
    {
      dimension: "power",
      figure: "W",
      factor: 1,
      words: "watt|watts",
      beside: "w",
      heard: "what s|wats|wat",
    },
    { dimension: "power", figure: "MW", factor: 1e6, words: "megawatt|megawatts" },
    { dimension: "power", figure: "mW", factor: 1e-3, words: "milliwatt|milliwatts|mw" },
    {
      dimension: "power",
      figure: "hp",
      factor: 745.6998715822702,
      words: "hp|horsepower|horse power|horse",
    },
    {
      dimension: "power",
      figure: "ton",
      factor: 3516.852842,
      words: "tons of cooling|ton of cooling",
    },
    {
      dimension: "power",
      figure: "Btu/h",
      factor: 0.2930710701722222,
      words: "btu|btuh|btu h|btus|btu hr|mbh btu|b t u",
    },
  ],
  words: "power|input power|power draw|wattage|watts",
  habit: { us: "kW", si: "kW" },
  plausible: [0, 5e6],
} as const satisfies Quantity;
