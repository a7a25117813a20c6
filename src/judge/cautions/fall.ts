import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const fall: CautionRule = {
  id: "fall",
  severity: "danger",
  says: "Fall protection from 4 ft up, 6 ft in construction; a skylight or hatch is a hole.",
  source: "29 CFR 1910.28(b)(1), (b)(3); 29 CFR 1926.501(b)",
  fits: (scene) => nearest([2, said(scene, /open edge|scaffold|scissor lift|open hatch/)]),
};
