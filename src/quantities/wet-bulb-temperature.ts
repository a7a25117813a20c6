import type { Quantity } from "./quantity.ts";

export const wetBulbTemperature = {
  name: "wet_bulb_temperature",
  unit: "Cel",
  dimensions: ["temperature"],
  units: [],
  words:
    "wet bulb|wetbulb|wb|twb|t wb|w b|web bulb|wet bulb temp|wet ball|wet bowl|wet bulbs|wet-bulb|wblb",
  habit: { us: "F", si: "C" },
  plausible: [-40, 60],
} as const satisfies Quantity;
