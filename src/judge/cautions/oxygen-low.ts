import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const oxygenLow: CautionRule = {
  id: "oxygen_low",
  severity: "danger",
  says: "Refrigerant sinks and takes the air's place: ventilate, heed the alarm, stay out under 19.5 percent oxygen.",
  source: "ANSI/ASHRAE 34 and 15; 29 CFR 1910.146(b)",
  fits: (scene) =>
    nearest([
      3,
      said(scene, /leak/) &&
        said(scene, /machine room|basement|walk-?in|crawl|vault|confined|pit\b/),
    ]),
};
