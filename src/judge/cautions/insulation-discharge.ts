import type { CautionRule } from "../caution.ts";
import { insulationTested, nearest, said } from "./fits.ts";

export const insulationDischarge: CautionRule = {
  id: "insulation_discharge",
  severity: "warning",
  says: "Ground the winding four times as long as you tested it before you touch it or move on: it holds a charge.",
  source: "IEEE 43-2013 4 and 5.5; instrument guides",
  fits: (scene) =>
    nearest(
      [
        2,
        insulationTested(scene) &&
          said(scene, /10 min|ten min|polarization|absorption|next lead|lead to lead/),
      ],
      [1, insulationTested(scene)],
    ),
};
