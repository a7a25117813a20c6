import type { Fault } from "../fault.ts";

export const systemWet: Fault = {
  fault: "system_wet",
  says: "there is moisture in the circuit",
  common: 1.5,
  shows: {
    "evacuation:wet": 0.78,
    "evacuation:leak": 0.03,
    "evacuation:rising": 0.18,
    "evacuation:tight": 0.01,
    "sight_glass:sight_glass_shows_moisture": 0.5,
    "hold:holds": 0.95,
    "hold:drops": 0.05,
    "burning:acid_found": 0.08,
    "frost:frost_at_restriction": 0.02,
  },
  proof: [
    {
      check: "evacuation",
      why: "Triple evacuation: break with dry nitrogen, sweep, pull again with fresh pump oil, warm the cold spots with heat where liquid water may sit, a new drier, then a longer hold of 20 minutes to see it dry",
      minutes: 30,
      danger: 1,
      fills: ["second_pull"],
    },
  ],
  source: "common practice, no source",
};
