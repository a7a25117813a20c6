import type { CautionRule } from "../caution.ts";
import { nearest, said, seenAny } from "./fits.ts";

export const acid: CautionRule = {
  id: "acid",
  severity: "warning",
  says: "Burnout oil is acid: gloves, goggles, off the skin, air the place, waste double-bagged.",
  source: "ASHRAE Handbook - Refrigeration (clean-up after burnout)",
  fits: (scene) =>
    nearest(
      [3, seenAny(scene, "acid_found", "oil_black")],
      [2, said(scene, /burn-?out|acid|black oil|oil is black/)],
    ),
};
