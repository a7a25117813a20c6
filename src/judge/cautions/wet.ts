import type { CautionRule } from "../caution.ts";
import { nearest, said, seenAny } from "./fits.ts";

export const wet: CautionRule = {
  id: "wet",
  severity: "danger",
  says: "Wet and live do not go together: off and locked, or wait for dry. Tools and lights on a GFCI.",
  source: "NFPA 70E 110 and 130; 29 CFR 1910.334(a)",
  fits: (scene) =>
    nearest([
      2,
      seenAny(scene, "wet_weather", "water_inside") ||
        said(
          scene,
          /\brain(?:ing|s|y)?\b|standing water|snowing|pouring|flooded (?:pit|room|basement)|wet roof/,
        ),
    ]),
};
