import type { Quantity } from "./quantity.ts";

export const faultCode = {
  name: "fault_code",
  unit: null,
} as const satisfies Quantity;
