import type { Quantity } from "./quantity.ts";

export const diodeDrop = {
  name: "diode_drop",
  unit: "V",
  dimensions: ["voltage"],
  units: [],
  words:
    "diode|diodes|diode drop|diode test|diode drops|diode check|diode mode|forward drop|forward drops|forward voltage|diode reading|diode readings|drops|diode setting|diode scale|diode function",
  habit: { us: "V", si: "V" },
  plausible: [0, 3.5],
} as const satisfies Quantity;
