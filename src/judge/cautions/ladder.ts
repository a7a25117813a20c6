import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const ladder: CautionRule = {
  id: "ladder",
  severity: "warning",
  says: "Ladder one out for four up, 3 ft past the landing, tied; tools on a rope.",
  source: "29 CFR 1910.23(c); 29 CFR 1926.1053(b)",
  fits: (scene) => nearest([2, said(scene, /ladder/)]),
};
