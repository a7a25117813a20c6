import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const meterCat: CautionRule = {
  id: "meter_cat",
  severity: "notice",
  says: "Meter and leads rated CAT III 600 V at least, CAT IV at a service, and leads looked over first.",
  source: "IEC 61010-1 and 61010-2-033; 29 CFR 1910.334(c)",
  fits: (scene) =>
    nearest([
      1,
      said(scene, /at the (?:service|disconnect|panel)|service entrance|cat (?:iii|iv)/),
    ]),
};
