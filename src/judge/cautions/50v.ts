import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const live50v: CautionRule = {
  id: "50v",
  severity: "danger",
  says: "From 50 V up it can kill until proven dead. Live readings: qualified people, rated gloves and tools, nothing metal on you.",
  source: "29 CFR 1910.333(a)(1), (c)(2), (c)(8); 1910.335(a); NFPA 70E 130",
  fits: (scene) =>
    nearest(
      [2, said(scene, /energized|hot panel|live (?:panel|work)|with (?:it|power|the power) on\b/)],
      [
        1,
        said(
          scene,
          /\bl[123] ?-? ?l[123]\b|amp draw|clamp|\bvolts\b|\d ?v(?:ac)?\b.*running|running.*\d ?v(?:ac)?\b/,
        ),
      ],
    ),
};
