import { applicationOf, isHeating } from "../application.ts";
import type { Check } from "../check.ts";
import { told } from "./told.ts";

/** Defrost of the outdoor coil in heating, or of a cold room's coil, as it is told. */
export const defrost: Check = {
  name: "sensor",
  examples: [
    {
      level: "bad",
      notes: ["outdoor coil is iced solid and it never went into defrost, 28 F out"],
      equipment: { mode: "heating", refrigerant: "R-410A" },
    },
  ],
  signs: ["defrosting:fails"],
  judge: (scene) => {
    const cold = /^(cooler|freezer)$/.test(applicationOf(scene));
    const heats = isHeating(scene) || /heat pump|heat recovery/.test(scene.facts.kind ?? "");
    return heats || cold ? told(scene, "sensor") : [];
  },
};
