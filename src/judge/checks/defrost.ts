import { applicationOf, isHeating } from "../application.ts";
import type { Check } from "../check.ts";
import { told } from "./told.ts";

/** Defrost of the outdoor coil in heating, or of a cold room's coil, as it is told. */
export const defrost: Check = {
  name: "sensor",
  signs: ["defrosting:fails"],
  judge: (scene) => {
    const cold = /^(cooler|freezer)$/.test(applicationOf(scene));
    const heats = isHeating(scene) || /heat pump|heat recovery/.test(scene.facts.kind ?? "");
    return heats || cold ? told(scene, "sensor") : [];
  },
};
