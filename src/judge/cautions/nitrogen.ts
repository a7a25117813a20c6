import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const nitrogen: CautionRule = {
  id: "nitrogen",
  severity: "danger",
  says: "Dry nitrogen through a regulator with relief, set just over the test; never above the plate's test pressure.",
  source: "ANSI/ASHRAE 15 (field leak and strength tests)",
  fits: (scene) => nearest([2, said(scene, /nitrogen|\bn2\b|pressure test|standing test|nitro\b/)]),
};
