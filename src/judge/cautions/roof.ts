import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const roof: CautionRule = {
  id: "roof",
  severity: "danger",
  says: "Within 6 ft of a roof edge: rail, restraint or harness.",
  source: "29 CFR 1910.28(b)(13); 29 CFR 1926.501(b)(1)",
  fits: (scene) =>
    nearest([3, said(scene, /roof edge|edge of the roof|skylight|parapet|ft from the edge/)]),
};
