import type { CautionRule } from "../caution.ts";
import { insulationTested, nearest } from "./fits.ts";
import { insulationVacuum } from "./insulation-vacuum.ts";

export const insulationDead: CautionRule = {
  id: "insulation_dead",
  severity: "danger",
  says: "An insulation tester puts out 500 V or more: only on a locked-out, dead, disconnected motor, hands and helpers clear.",
  source: "IEEE 43-2013 4; IEC 61557-2",
  // under vacuum there is no test at all, which another caution says
  fits: (scene) =>
    insulationVacuum.fits(scene) === undefined ? nearest([2, insulationTested(scene)]) : undefined,
};
