import type { Quantity } from "./quantity.ts";

export const relativeHumidity = {
  name: "relative_humidity",
  unit: "%",
  dimensions: ["percent"],
  units: [
    {
      dimension: "percent",
      figure: "percent",
      factor: 1,
      words: "%|percent|per cent|pct|prcnt",
      heard: "per sent|percents|purse scent",
    },
    {
      dimension: "percent",
      figure: "percent",
      factor: 1,
      words:
        "%rh|% rh|percent rh|percent relative humidity|percent humidity|rh percent|percent r h|% humidity|% relative humidity",
      settles: "relative_humidity",
    },
  ],
  words: "rh|rel hum|rel humidity|relative humidity|humidity|r h|humid",
  habit: { us: "percent", si: "percent" },
  plausible: [0, 100],
} as const satisfies Quantity;
