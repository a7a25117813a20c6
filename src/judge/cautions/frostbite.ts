import type { CautionRule } from "../caution.ts";
import { doneAny, nearest, said } from "./fits.ts";

export const frostbite: CautionRule = {
  id: "frostbite",
  severity: "warning",
  says: "Liquid refrigerant freezes skin and eyes: goggles, gloves, fittings cracked slowly.",
  source: "refrigerant safety data sheets; 29 CFR 1910.132 to 138",
  fits: (scene) =>
    nearest(
      [
        2,
        doneAny(scene, "charged") ||
          said(scene, /\badding\b|\bcharging\b|charge it|topping|hoses? off|\bpurg/),
      ],
      [1, said(scene, /\brecover/)],
    ),
};
