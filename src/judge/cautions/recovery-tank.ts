import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const recoveryTank: CautionRule = {
  id: "recovery_tank",
  severity: "warning",
  says: "Weigh the recovery cylinder, stop at 80 percent, one gas in it, never refill a disposable.",
  source: "49 CFR 173.304a, 178.65; AHRI Guideline K; 40 CFR 82.156",
  fits: (scene) => {
    const recovers = said(scene, /\brecover(?:y|ing|ed)?\b|reclaim/);
    // the cylinder itself is spoken of, and filled
    const fills = recovers && said(scene, /\b(?:cylinder|bottle|tank|tare|wc|water capacity)\b/);
    return nearest([3, fills && !said(scene, /\brecovered\b/)], [2, recovers]);
  },
};
