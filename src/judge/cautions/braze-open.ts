import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const brazeOpen: CautionRule = {
  id: "braze_open",
  severity: "danger",
  says: "Flame only on a circuit that is empty, open to air and has nitrogen trickling through; never on one sealed or charged.",
  source: "refrigerant handling codes; 29 CFR 1910.252",
  fits: (scene) =>
    nearest(
      [
        3,
        said(
          scene,
          /(?:going to|gonna|about to|time to|will|ready to) (?:braze|solder|sweat|unsweat)|brazing (?:it )?now/,
        ),
      ],
      [2, said(scene, /\bbraz(?:e|ing)\b|solder|unsweat|\btorch\b/)],
    ),
};
