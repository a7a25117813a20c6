import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const lift: CautionRule = {
  id: "lift",
  severity: "notice",
  says: "Above about 50 lb a hoist, a dolly or a second back.",
  source: "NIOSH revised lifting equation; 29 CFR 1926.1400 ff",
  fits: (scene) =>
    nearest([
      2,
      said(scene, /hoist|crane|carry(?:ing)? (?:the|that) comp|lift(?:ing)? the compressor/),
    ]),
};
