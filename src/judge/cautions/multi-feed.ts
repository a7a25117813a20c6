import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const multiFeed: CautionRule = {
  id: "multi_feed",
  severity: "warning",
  says: "One disconnect may not be all: heaters, control power, interlocks and outlets can be fed from elsewhere. Test each.",
  source: "NFPA 70E 120.5 (find all sources); 29 CFR 1910.333(b)(2)(ii)",
  fits: (scene) =>
    nearest(
      [
        2,
        said(
          scene,
          /two disconnects|second (?:feed|source|disconnect)|separate(?:ly)? fed|heat trace|120 ?v control|convenience outlet/,
        ),
      ],
      [1, said(scene, /crankcase heater|interlock/)],
    ),
};
