import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const trappedLiquid: CautionRule = {
  id: "trapped_liquid",
  severity: "warning",
  says: "Liquid shut between two valves bursts the line as it warms: leave it a way out.",
  source: "ANSI/ASHRAE 15 (hydrostatic relief)",
  fits: (scene) =>
    nearest([
      2,
      said(
        scene,
        /king valve|pump(?:ed|ing)? (?:it )?down|front-?seat|heat gun|both valves closed/,
      ),
    ]),
};
