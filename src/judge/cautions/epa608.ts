import type { CautionRule } from "../caution.ts";
import { doneAny, nearest, said } from "./fits.ts";

export const epa608: CautionRule = {
  id: "epa608",
  severity: "notice",
  says: "Opening the circuit takes EPA 608 certification; nothing vented, every pound logged.",
  source: "40 CFR 82.161, 82.154, 82.156 to 82.157",
  fits: (scene) =>
    nearest(
      [
        2,
        doneAny(scene, "charged") ||
          said(scene, /\badding\b|\bcharging\b|top(?:ped|ping)? (?:it )?off/),
      ],
      [1, said(scene, /\bgauges\b|\brecover/)],
    ),
};
