import type { Quantity } from "./quantity.ts";

export const waterFlow = {
  name: "water_flow",
  unit: "m3/s",
  dimensions: ["waterflow", "airflow"],
  units: [
    {
      dimension: "waterflow",
      figure: "gpm",
      factor: 6.30901964e-5,
      words:
        "gpm|gallons per minute|gallons a minute|g p m|gal min|gallon per minute|gals per minute|gals a minute|gallon a minute|gals per min|gal per min",
      heard: "gpm s|g p ms|gallons permanent|gp m|g pm|jpm",
    },
    {
      dimension: "waterflow",
      figure: "L/min",
      factor: 1.6666666666666667e-5,
      words:
        "l min|lpm|liters per minute|litres per minute|liters a minute|litres a minute|liter per minute|litre per minute|liter a minute|litre a minute|l per minute",
    },
    {
      dimension: "waterflow",
      figure: "L/h",
      factor: 1e-3 / 3600,
      words:
        "l h|lph|l hr|liters per hour|litres per hour|liters an hour|litres an hour|liter per hour|litre per hour|liter an hour|litre an hour|l per hour",
    },
  ],
  words:
    "water flow|flow|waterflow|pump flow|flow rate|chilled water flow|condenser water flow|loop flow",
  habit: { us: "gpm", si: "m3/h" },
  plausible: [0, 10],
} as const satisfies Quantity;
