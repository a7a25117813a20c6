import type { Quantity } from "./quantity.ts";

export const insulationResistance = {
  name: "insulation_resistance",
  unit: "Ohm",
  dimensions: ["resistance"],
  units: [
    {
      dimension: "resistance",
      figure: "megohm",
      factor: 1e6,
      words:
        "megohm|megohms|mega ohm|mega ohms|meg ohm|meg ohms|meg o|megω|meg|megs|mega|megas|megger",
      beside: "m|mohm|mohms|mω",
      heard:
        "mega homes|make a homes|make a home|make a home's|make homes|mag a homes|meg homes|mega home|mega own|mega owns|mega oh|megs ohm|mig|migs|maga ohms|maga ohm|mega alms|mega arms|megga ohms|megaohmes|mega homs|megahomes|megahoms|mag ohms|mag|mags|magohms",
    },
    {
      dimension: "resistance",
      figure: "gigohm",
      factor: 1e9,
      words:
        "gigohm|gigohms|gohm|gohms|gigaohm|gigaohms|giga ohm|giga ohms|gig ohm|gig ohms|gω|gig|gigs|giga",
      beside: "g",
      heard: "giga homes|gig homes|jig|jigs|gigahomes|giggle ohms|gig a ohms|giggs|kig",
    },
    {
      dimension: "resistance",
      figure: "teraohm",
      factor: 1e12,
      words: "teraohm|teraohms|tera ohm|tera ohms|tera|tω",
    },
  ],
  words:
    "insulation|insulation resistance|insulation test|isolation|meg test|megger test|megger|meggered|megged|meggd|mgd|mggd|megging|meggin|meg|megs|meg reading|meg readings|megohm test|ir test|iso test|iso|hi pot|hipot|megs out|meg out|megger reading",
  habit: { us: "megohm", si: "megohm" },
  plausible: [0, 2e13],
} as const satisfies Quantity;
