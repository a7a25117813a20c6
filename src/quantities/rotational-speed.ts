import type { Quantity } from "./quantity.ts";

export const rotationalSpeed = {
  name: "rotational_speed",
  unit: "1/min",
  dimensions: ["speed"],
  units: [
    {
      dimension: "speed",
      figure: "rpm",
      factor: 1,
      words:
        "rpm|rpms|r p m|r p ms|revs|rev per minute|revs per minute|revolutions per minute|revolutions a minute|revs a minute|revolutions|rev min|r min",
      heard: "our pm|rp m|r pm|are pm|arpm",
    },
    {
      dimension: "speed",
      figure: "rps",
      factor: 60,
      words: "rps|revs per second|revolutions per second|rev s|r p s",
    },
  ],
  words:
    "rotational speed|shaft speed|fan speed|motor speed|wheel speed|blower speed|speed|tach|tachometer",
  habit: { us: "rpm", si: "rpm" },
  plausible: [0, 60000],
} as const satisfies Quantity;
