import type { CautionRule } from "../caution.ts";
import { chargedBusV, nearest } from "./fits.ts";

export const dcEnergy: CautionRule = {
  id: "stored_energy",
  severity: "danger",
  says: "That bus is still charged: back off, let it drain, read it again. Never short it with a tool.",
  source: "29 CFR 1910.333(b)(2)(ii)(C); NFPA 70E article 360",
  fits: (scene) => nearest([3, chargedBusV(scene) !== undefined]),
};
