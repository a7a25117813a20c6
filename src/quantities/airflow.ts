import type { Quantity } from "./quantity.ts";

export const airflow = {
  name: "airflow",
  unit: "m3/s",
  dimensions: ["airflow"],
  units: [
    {
      dimension: "airflow",
      figure: "cfm",
      factor: 0.0004719474432,
      words:
        "cfm|cubic feet per minute|cubic feet a minute|cubic foot per minute|cfms|c f m|scfm|acfm|ft3 min",
      heard: "c f ms|see f m|cf m|c fm|see fm|sea f m|c of m|cfn",
    },
    {
      dimension: "airflow",
      figure: "m3/h",
      factor: 0.0002777777777777778,
      words:
        "m3 h|m3h|m3 hr|cmh|cubic meters per hour|cubic metres per hour|cubic meters an hour|cubic metres an hour|m³ h|m³h|cubic meter per hour|cubic metre per hour|cubes an hour|m3 per hour|cubic meters hour",
    },
    {
      dimension: "airflow",
      figure: "m3/s",
      factor: 1,
      words:
        "m3 s|m3s|cubic meters per second|cubic metres per second|cubic meters a second|m³ s|m³s|m3 per second",
    },
    {
      dimension: "airflow",
      figure: "L/s",
      factor: 1e-3,
      words:
        "l s|lps|liters per second|litres per second|liters a second|litres a second|liter per second|litre per second|l sec",
    },
  ],
  words: "airflow|air flow|air volume|flow rate air|traverse",
  habit: { us: "cfm", si: "m3/h" },
  plausible: [0, 500],
} as const satisfies Quantity;
