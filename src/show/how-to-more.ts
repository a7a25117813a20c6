import type { HowTo } from "./how-to.ts";

export const gasHeatHow: HowTo = {
  where: "Return and supply duct out of sight of the burners; the flame rod's wire in series.",
  meter: "Two thermometers after 10 minutes of fire; meter on dc microamps.",
  caution: "Burners and flue are hot; a rod's wire carries line voltage on some boards.",
  good: "Rise inside the plate's range, flame over 1.5 microamps and steady.",
  source: "The plate's rise; flame current by common practice, no source.",
  send: "Text: return 66, supply 118, plate 35 to 65, flame 2.8 microamps.",
};

export const lineChargeHow: HowTo = {
  where: "Liquid line from the outdoor unit to the farthest coil, and what the plate covers.",
  meter: "Tape along the run; read the line's outer diameter.",
  caution: "Roof edges and ladders: measure from a stand, not from a stretch.",
  good: "Line length and size written on the unit for whoever comes next.",
  source: "Tube tables and liquid density of the gas.",
  send: "Text: liquid line 3/8, 55 ft, plate covers 15 ft.",
};
