import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const lockout: CautionRule = {
  id: "lockout",
  severity: "danger",
  says: "Your own lock and tag on the disconnect, stored energy let out, a try at the start button: then hands in.",
  source: "29 CFR 1910.147(d); electrical parts 29 CFR 1910.333(b)(2)",
  fits: (scene) =>
    nearest(
      [
        2,
        said(
          scene,
          /(?:going|about|want|gonna|need|let me|time) (?:to |back in to )?(?:pull|change|swap|replace|lift|open)|changing (?:the|out)|swapping|pulling (?:the|fuses)/,
        ),
      ],
      [
        1,
        said(
          scene,
          /pull(?:ed|ing)? (?:the )?fuse|lift(?:ed|ing)? (?:the )?leads|replac(?:e|ing) (?:the )?(?:contactor|motor|board|belt)|welded/,
        ),
      ],
    ),
};
