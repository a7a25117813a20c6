import type { Quantity } from "./quantity.ts";

export const airflow = {
  name: "airflow",
  unit: "m3/s",
} as const satisfies Quantity;
