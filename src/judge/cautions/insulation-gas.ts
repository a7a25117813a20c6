import type { CautionRule } from "../caution.ts";
import { flammableGas, insulationTested, nearest, said } from "./fits.ts";

export const insulationGas: CautionRule = {
  id: "insulation_gas",
  severity: "danger",
  says: "No insulation test where flammable gas may hang: a weak spot sparks. Air out and check with a detector first.",
  source: "instrument guides; IEC/UL 60335-2-40 annex DD",
  fits: (scene) =>
    nearest(
      [3, insulationTested(scene) && flammableGas(scene) && said(scene, /leak/)],
      [1, insulationTested(scene) && flammableGas(scene)],
    ),
};
