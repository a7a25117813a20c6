import type { CautionRule } from "../caution.ts";
import { flammableGas, nearest, said } from "./fits.ts";

export const a2l: CautionRule = {
  id: "a2l",
  severity: "danger",
  says: "Flammable gas in this circuit: no flame or spark, air moving, detector on, nitrogen purge before any torch.",
  source: "IEC/UL 60335-2-40 annex DD; ANSI/ASHRAE 15",
  fits: (scene) =>
    nearest(
      [3, flammableGas(scene) && said(scene, /braz|torch|leak|solder/)],
      [2, flammableGas(scene) && said(scene, /open|charg|recover|adding|purg/)],
    ),
};
