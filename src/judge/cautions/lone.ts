import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const lone: CautionRule = {
  id: "lone",
  severity: "warning",
  says: "Alone up there: agree check-in times, say where you are, stop if the signal goes.",
  source: "HSE INDG73; no general OSHA rule",
  fits: (scene) =>
    nearest([
      2,
      said(
        scene,
        /(?<!\b(?:left|leave|leaves|leaving|let) (?:(?:it|that|them|this|those|him) )?)\balone\b|by myself|\bsolo\b|no one (?:else )?(?:on site|here)/,
      ),
    ]),
};
