import type { CautionRule } from "../caution.ts";
import { belowFloorsOhm } from "../checks/insulation-tier.ts";
import { lowestToGroundOhm, nearest, said, seenAny } from "./fits.ts";

export const grounded: CautionRule = {
  id: "grounded",
  severity: "danger",
  says: "That looks like a ground fault: power stays off and tagged, leads taped. No trying once more to see.",
  source: "hermetic service safety literature; 29 CFR 1910.334(b)(2)",
  fits: (scene) =>
    nearest(
      [
        3,
        (lowestToGroundOhm(scene) ?? Number.POSITIVE_INFINITY) < belowFloorsOhm ||
          seenAny(scene, "continuity_to_ground"),
      ],
      [
        2,
        said(
          scene,
          /dead short|short(?:ed)? to ground|\bgrounded (?:comp|winding|motor)|0 ohms? to ground/,
        ),
      ],
    ),
};
