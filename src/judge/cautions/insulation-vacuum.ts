import type { CautionRule } from "../caution.ts";
import { insulationTested, nearest, said, underVacuum } from "./fits.ts";

export const insulationVacuum: CautionRule = {
  id: "insulation_vacuum",
  severity: "warning",
  says: "Under vacuum no insulation test and no power on that compressor: thin gas arcs. Break it with vapor or nitrogen first.",
  source: "trade guidance; Paschen's law",
  fits: (scene) =>
    nearest(
      [3, underVacuum(scene) && (insulationTested(scene) || said(scene, startWords))],
      [
        3,
        said(scene, /vacuum|\bvac\b|\bmicrons?\b|evacuat/) &&
          said(
            scene,
            /(?:going to|gonna|about to|want to|let me|will|before i break)[^.]*(?:meg|start|power|run|bump|energize)|meg[^.]*(?:vacuum|\bvac\b|micron)|(?:vacuum|\bvac\b|micron)[^.]*\b(?:meg|megger|start it|power it)/,
          ),
      ],
    ),
};

const startWords =
  /\b(?:i'?ll|going to|gonna|about to|want to|let me|will)\b[^.]{0,24}\b(?:start|power|run|bump|energize)\b/;
