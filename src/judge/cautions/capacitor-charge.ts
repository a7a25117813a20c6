import type { CautionRule } from "../caution.ts";
import { nearest } from "./fits.ts";

/** Caps of valves and ports hold no charge. */
const valveCaps =
  /\bpacking(?: nuts?)?,? (?:and|n|&) caps?\b|\b(?:schrader|valve|service|port|dust|stem|gas|drain|flare|locking|suction|liquid|king) caps?\b|\bcaps? (?:is |are )?(?:back on|on|off|tight|tightened|snug|retightened|missing|loose)\b|\bcap tubes?\b/g;

export const capacitorCharge: CautionRule = {
  id: "stored_energy",
  severity: "danger",
  says: "Bleed the capacitor through a resistor and read it near 0 V before a finger comes close; its own bleeder may be dead.",
  source: "29 CFR 1910.333(b)(2)(ii)(C); NEC 460.6",
  fits: (scene) => {
    const words = scene.words.replace(valveCaps, "");
    const measured = scene.readings.some(({ quantity }) => quantity === "capacitance");
    return nearest([2, measured || /\bcaps?\b|capacitor|\bmfd\b|microfarad|\buf\b/.test(words)]);
  },
};
