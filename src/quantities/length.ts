import type { Quantity } from "./quantity.ts";

export const length = {
  name: "length",
  unit: "m",
  dimensions: ["length"],
  units: [
    {
      dimension: "length",
      figure: "ft",
      factor: 0.3048,
      words: "ft|foot|feet|fts",
      beside: "'",
      heard: "feets",
    },
    { dimension: "length", figure: "in", factor: 0.0254, words: "inch|inches|ins", beside: 'in|"' },
    {
      dimension: "length",
      figure: "m",
      factor: 1,
      words: "meter|meters|metre|metres",
      beside: "m",
      heard: "meter s",
    },
    {
      dimension: "length",
      figure: "cm",
      factor: 1e-2,
      words: "cm|centimeter|centimeters|centimetre|centimetres",
    },
    {
      dimension: "length",
      figure: "mm",
      factor: 1e-3,
      words: "mm|millimeter|millimeters|millimetre|millimetres|mil|mils",
    },
    { dimension: "length", figure: "dm", factor: 1e-1, words: "dm|decimeter|decimeters" },
    {
      dimension: "length",
      figure: "km",
      factor: 1e3,
      words: "km|kilometer|kilometers|kilometre|kilometres",
    },
    { dimension: "length", figure: "yd", factor: 0.9144, words: "yd|yds|yard|yards" },
    { dimension: "length", figure: "mi", factor: 1609.344, words: "mi|mile|miles" },
    { dimension: "length", figure: "nm", factor: 1e-9, words: "nm|nanometer|nanometers" },
    {
      dimension: "length",
      figure: "um",
      factor: 1e-6,
      words: "micrometer|micrometers|micrometre|micrometres",
    },
  ],
  words:
    "length|line length|line run|lineset length|line set length|line set|lineset|pipe run|pipe length",
  habit: { us: "ft", si: "m" },
  plausible: [0, 1e6],
} as const satisfies Quantity;
