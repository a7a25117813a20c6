import type { Quantity } from "./quantity.ts";

export const subcooling = {
  name: "subcooling",
  unit: "K",
  dimensions: ["temperature"],
  units: [],
  words:
    "subcooling|subcl|subclg|sbcl|sub cl|undercooling|under cooling|sub cooling|sc|s c|subcool|sub cool|sub-cooling|sub calling|sub cooled|subcooled|sub culling|subcoolin|subkool|sub kool|sub-cool|sub coolings|sub cruel|subcoling|sub ceiling|sub cling|sob cooling|some cooling|sub pooling|subcoool|sub|subcol|sub col|subcl|sub clg|subcooing|subc",
  habit: { us: "F", si: "C" },
  plausible: [-5, 60],
  difference: true,
} as const satisfies Quantity;
