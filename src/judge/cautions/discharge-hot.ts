import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const dischargeHot: CautionRule = {
  id: "discharge_hot",
  severity: "notice",
  says: "Discharge lines and heads can pass 100 C (212 F): clamp or probe, no hand.",
  source: "common practice, no source",
  fits: (scene) =>
    nearest([1, said(scene, /too hot to (?:touch|leave a hand)|discharge (?:line|temp)/)]),
};
