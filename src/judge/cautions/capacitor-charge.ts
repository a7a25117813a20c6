import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const capacitorCharge: CautionRule = {
  id: "stored_energy",
  severity: "danger",
  says: "Bleed the capacitor through a resistor and read it near 0 V before a finger comes close; its own bleeder may be dead.",
  source: "29 CFR 1910.333(b)(2)(ii)(C); NEC 460.6",
  fits: (scene) => nearest([2, said(scene, /\bcaps?\b|capacitor|\bmfd\b|microfarad|\buf\b/)]),
};
