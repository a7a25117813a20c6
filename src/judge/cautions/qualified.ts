import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const qualified: CautionRule = {
  id: "qualified",
  severity: "notice",
  says: "Feeder, panel and new circuits belong to a licensed electrician; live work to a qualified person.",
  source: "29 CFR 1910.333(c)(2), 1910.399; state and local licensing law",
  fits: (scene) =>
    nearest([
      2,
      said(scene, /feeder|new circuit|pull(?:ing)? (?:new )?wire|main panel|in the panel/),
    ]),
};
