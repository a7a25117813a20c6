import type { Quantity } from "./quantity.ts";

export const superheat = {
  name: "superheat",
  unit: "K",
  dimensions: ["temperature"],
  units: [],
  words:
    "superheat|superheating|super heating|super|superht|supht|sup ht|s heat|overheat|over heat|super heat|sh|s h|supper heat|supra heat|super eat|total superheat|suction superheat|suphet|super-heat|compressor superheat|evaporator superheat|superhot|evap superheat|super heated|super he|soup or heat|soup are heat|soup her heat|soup heat|super heater|super hate|super heap|stupor heat|suit per heat|supper eat|supper he|super heet|supe heat|ssh|spr ht|sprheat|super heats|superheats|discharge superheat|dsh",
  habit: { us: "F", si: "C" },
  plausible: [-5, 80],
  difference: true,
} as const satisfies Quantity;
