import type { Quantity } from "./quantity.ts";

export const concentration = {
  name: "concentration",
  unit: "ppm",
  dimensions: ["concentration"],
  units: [
    {
      dimension: "concentration",
      figure: "ppm",
      factor: 1,
      words: "ppm|parts per million|p p m|ppms|part per million",
      heard: "parts per millions|pp m|p pm|parts for million",
    },
  ],
  words:
    "concentration|co|co2|co two|c o two|c o|carbon monoxide|carbon dioxide|leak detector|detector|ppm|co reading|refrigerant monitor",
  habit: { us: "ppm", si: "ppm" },
  plausible: [0, 1e6],
} as const satisfies Quantity;
