import type { Quantity } from "./quantity.ts";

export const temperatureDifference = {
  name: "temperature_difference",
  unit: "K",
  dimensions: ["temperature"],
  units: [],
  words:
    "delta t|dt|d t|td|t d|split|temp split|temperature split|temp drop|temperature drop|temp rise|temperature rise|temp difference|temperature difference|delta tee|δt|temp diff|delta|approach|air split|air delta|coil split|delta temp|delta temperature|temp change|temp loss|evap td|drop across|rise across|heat rise|tempdrop|temprise|d p",
  habit: { us: "F", si: "C" },
  plausible: [-120, 150],
  difference: true,
} as const satisfies Quantity;
