import type { CautionRule } from "../caution.ts";
import { nearest, said, temperatureAtLeast } from "./fits.ts";

export const heat: CautionRule = {
  id: "heat",
  severity: "warning",
  says: "Hot work place: water every quarter hour, shade, ease in. Dizzy or confused: stop, cool down, call for help.",
  source: "NIOSH 2016-106; OSHA heat guidance",
  fits: (scene) =>
    nearest(
      [3, said(scene, /dizzy|cramps|overheated (?:myself|guy|helper)|heat stroke/)],
      [2, said(scene, /hot roof|heat index|attic is|roasting up here/)],
      [2, temperatureAtLeast(scene, 32)],
    ),
};
