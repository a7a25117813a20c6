import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const relief: CautionRule = {
  id: "relief",
  severity: "danger",
  says: "Never plug, cap or reset a relief: find the overpressure, and a valve that lifted is done.",
  source: "ANSI/ASHRAE 15 section 9; ASME BPVC section VIII",
  fits: (scene) =>
    nearest([
      3,
      said(
        scene,
        /relief (?:valve )?(?:is )?(?:weep|leak|lift|popp|blow)|rupture disc|fusible plug|\bprv\b|popped (?:the )?relief/,
      ),
    ]),
};
