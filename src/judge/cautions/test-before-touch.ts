import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

/** "Dead" of a circuit; a dead fan is one that does not turn. */
const deadCircuit =
  /(?<!\b(?:fans?|motors?|blowers?|comps?|compressors?|pumps?|units?|heaters?|stats?|thermostats?|displays?|boards?|legs?|one|two|is|are|both)(?: \d)? )\bdead\b/;

export const testBeforeTouch: CautionRule = {
  id: "test_before_touch",
  severity: "danger",
  says: "Meter on a known live source, then every phase to phase and to ground, then the live source again: only that proves it dead.",
  source: "NFPA 70E 120.5 (live-dead-live); 29 CFR 1910.333(b)(2)(iv)(B)",
  fits: (scene) =>
    nearest(
      [
        3,
        said(
          scene,
          /skip (?:the )?(?:dead )?test|no need to (?:test|prove)|been off (?:for )?(?:an hour|a while|all)|(?:it'?s|must be) dead/,
        ),
      ],
      [2, said(scene, /diode/)],
      [1, said(scene, /\bohms?\b|meg(?:ged|ger|s|ohm)?\b|leads off/)],
      [1, said(scene, deadCircuit)],
    ),
};
