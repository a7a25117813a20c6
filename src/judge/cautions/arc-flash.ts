import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const arcFlash: CautionRule = {
  id: "arc_flash",
  severity: "danger",
  says: "Read the arc-flash label before that cover moves. No label or no rated gear: switch it off upstream.",
  source: "NFPA 70E 130.5 to 130.7; 29 CFR 1910.335(a)",
  fits: (scene) =>
    nearest(
      [
        3,
        said(
          scene,
          /open(?:ed|ing)? (?:the )?(?:\d+ ?v )?(?:panel|disconnect|gear|mcc).*\b(?:live|hot|energized|power on)|(?:live|hot|energized) (?:4[68]0|575|600)/,
        ),
      ],
      [
        2,
        said(
          scene,
          /(?:480|575|600) ?v(?:olt)? (?:panel|disconnect|gear)|motor control center|under load.*(?:pull|open)|\brack(?:ing|ed)? (?:the|a) breaker/,
        ),
      ],
    ),
};
