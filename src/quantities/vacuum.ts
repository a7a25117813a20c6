import type { Quantity } from "./quantity.ts";

export const vacuum = {
  name: "vacuum",
  unit: "Pa",
  dimensions: ["low_pressure", "pressure"],
  units: [
    {
      dimension: "low_pressure",
      figure: "micron",
      factor: 0.1333223684210526,
      words:
        "micron|microns|µmhg|microns of mercury|microns hg|mics of vacuum|micros of vacuum|umhg",
      beside: "u|µ|um|mic|mics",
      heard:
        "micro n|mikrons|my crons|my cron|my crowns|my krons of|my crones|micro ns|mike rons|macrons|macron|my krons|microbes|mike ron|mikron|michael's|mykrons|moans|micro once|mic runs|mic rons|micro runs|crones|micron s|microwns",
    },
    {
      dimension: "low_pressure",
      figure: "torr",
      factor: 133.32236842105263,
      words: "torr|torrs|tor|mmhg|mm hg|millimeters of mercury|mm of mercury",
      heard: "tore|toor",
    },
    {
      dimension: "low_pressure",
      figure: "millitorr",
      factor: 0.13332236842105263,
      words: "millitorr|millitorrs|milli torr|mtorr|milli tor",
      heard: "milli tore|milli tour",
    },
    {
      dimension: "low_pressure",
      figure: "mbar",
      factor: 100,
      words: "mbar|millibar|millibars|milli bar|milli bars|mb",
    },
    {
      dimension: "low_pressure",
      figure: "Pa",
      factor: 1,
      words: "pa|pascal|pascals",
      heard: "pascale|paschal|pass cal|pascals s",
    },
  ],
  words:
    "vacuum|vac|vacuum gauge|micron gauge|micron|microns|evac|evacuation|decay|decay test|vaccume|vacuume|pulled down to|pulled to|pulled it to|pulled it down to|pulled her down to|hold test|rise test|vac hold|vacc",
  habit: { us: "micron", si: "micron" },
  plausible: [0, 101325],
} as const satisfies Quantity;
