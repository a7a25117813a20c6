import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const pmMotor: CautionRule = {
  id: "pm_motor",
  severity: "warning",
  says: "A permanent-magnet motor that turns makes volts at its leads: stop and block it before you touch them.",
  source: "NFPA 70E 120; motor theory; common practice, no source",
  fits: (scene) => nearest([2, said(scene, /\becm\b|ec fan|permanent magnet|windmill|back emf/)]),
};
