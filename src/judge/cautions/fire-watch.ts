import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const fireWatch: CautionRule = {
  id: "fire_watch",
  severity: "warning",
  says: "Clear or shield what burns within 35 ft, extinguisher at hand, someone watching for 30 minutes after, 60 by NFPA 51B.",
  source: "29 CFR 1910.252(a)(2)(iii); NFPA 51B",
  fits: (scene) =>
    nearest(
      [2, said(scene, /\btorch\b|hot work|grinding|cutting torch/)],
      [1, said(scene, /\bbraz(?:e|ing)\b/)],
    ),
};
