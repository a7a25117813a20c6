import { isHeating } from "../application.ts";
import type { Check } from "../check.ts";
import { told } from "./told.ts";

/** Defrost of the outdoor coil in heating, as it is told. */
export const defrost: Check = {
  name: "sensor",
  signs: ["defrosting:fails"],
  judge: (scene) => {
    const heats = isHeating(scene) || /heat pump|heat recovery/.test(scene.facts.kind ?? "");
    return heats ? told(scene, "sensor") : [];
  },
};
