import type { CautionRule } from "../caution.ts";
import { flammableGas, nearest, said } from "./fits.ts";

export const a2lTools: CautionRule = {
  id: "a2l_tools",
  severity: "warning",
  says: "Flammable gas: tools rated for it, switched on outside the gas, and the leak sensor never bypassed.",
  source: "IEC/UL 60335-2-40 annex DD; tool listing",
  fits: (scene) =>
    nearest([
      2,
      flammableGas(scene) && said(scene, /recovery machine|vacuum pump|leak sensor|leak detector/),
    ]),
};
