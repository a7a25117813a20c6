import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const cylinder: CautionRule = {
  id: "cylinder",
  severity: "warning",
  says: "Cylinders upright and chained, cap on to move, stand aside to open: full nitrogen is over 2000 psi.",
  source: "29 CFR 1910.101(b), 1910.253(b)",
  fits: (scene) => nearest([1, said(scene, /cylinder|bottle|\btank\b|regulator/)]),
};
