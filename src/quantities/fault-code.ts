import type { Quantity } from "./quantity.ts";

export const faultCode = {
  name: "fault_code",
  unit: null,
  dimensions: [],
  units: [],
  words: "",
} as const satisfies Quantity;
