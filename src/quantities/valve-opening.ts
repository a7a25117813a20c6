import type { Quantity } from "./quantity.ts";

export const valveOpening = {
  name: "valve_opening",
  unit: "%",
  dimensions: ["percent"],
  units: [
    {
      dimension: "percent",
      figure: "percent",
      factor: 1,
      words: "percent open|% open|pct open|percent opening|% opening",
      settles: "valve_opening",
    },
  ],
  words:
    "valve opening|hpv|high pressure valve|fgbv|flash gas bypass|flash gas bypass valve|eev|exv|lev|eevs|electronic valve|valve position|valve at|damper|damper position|expansion valve|economizer|econ damper|opening|oa damper|e e v|e x v|electronic expansion valve|chw valve|chilled water valve|hot water valve|mixing valve|bypass valve|pmv|branch valve|valve command|reheat valve|slide valve|damper at|modulating valve|hw valve|indoor valves|all indoor valves|valves|branch valves",
  habit: { us: "percent", si: "percent" },
  plausible: [0, 100],
} as const satisfies Quantity;
