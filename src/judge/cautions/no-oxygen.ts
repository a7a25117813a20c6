import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const noOxygen: CautionRule = {
  id: "no_oxygen",
  severity: "danger",
  says: "Never oxygen or compressed air in a refrigerant circuit: with oil it can explode. Dry nitrogen only.",
  source: "ANSI/ASHRAE 15",
  // "stack 390 co 38 o2 7.2" is what a flue holds
  fits: (scene) =>
    nearest([
      3,
      said(scene, /shop air|compressed air|oxygen|\bo2\b(?! ?(?:is |at )?\d)|air compressor/),
    ]),
};
