import type { Quantity } from "./quantity.ts";

export const frequency = {
  name: "frequency",
  unit: "Hz",
  dimensions: ["frequency"],
  units: [
    {
      dimension: "frequency",
      figure: "Hz",
      factor: 1,
      words: "hz|hertz|hertzes|cycles per second|cps|htz|hrz|hzs|hertzs|hrtz|hz's",
      heard: "hurts|hearts|herts|hertz s|hurtz",
    },
    { dimension: "frequency", figure: "kHz", factor: 1e3, words: "khz|kilohertz|kilo hertz" },
    { dimension: "frequency", figure: "MHz", factor: 1e6, words: "mhz|megahertz|mega hertz" },
  ],
  words: "frequency|freq|output frequency|line frequency|inverter frequency|drive speed",
  habit: { us: "Hz", si: "Hz" },
  plausible: [0, 500],
} as const satisfies Quantity;
