import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const fan: CautionRule = {
  id: "fan",
  severity: "warning",
  says: "Fans start by themselves. Lock out before a hand goes past the guard.",
  source: "29 CFR 1910.147; 1910.212(a)",
  fits: (scene) =>
    nearest(
      [
        2,
        said(
          scene,
          /guard off|sheave|(?:spin|push|spun|pushed)[^.]*(?:fan|blade|stick|hand)|reach(?:ing)? in/,
        ),
      ],
      [1, said(scene, /\bbelts?\b|blower|fan (?:motor|blade)/)],
    ),
};
