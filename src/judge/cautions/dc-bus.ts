import type { CautionRule } from "../caution.ts";
import { busWork, nearest, said } from "./fits.ts";

export const dcBus: CautionRule = {
  id: "stored_energy",
  severity: "danger",
  says: "Drive off, wait as long as its label says, then measure the bus: under 50 V to touch, near 0 V for a diode or ohm test.",
  source: "NFPA 79 6.5.1 and IEC 61800-5-1; 50 V: 29 CFR 1910.333(a)(1)",
  fits: (scene) =>
    nearest(
      [3, busWork(scene)],
      [
        2,
        said(
          scene,
          /diode|\bipm\b|rectifier|inverter board|drive board|pull (?:the|that) (?:board|module)/,
        ),
      ],
      [
        1,
        scene.facts.drive === "inverter" && said(scene, /inverter|\bdrive\b|dc bus|\bvfd\b|module/),
      ],
    ),
};
