import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const terminal: CautionRule = {
  id: "terminal",
  severity: "danger",
  says: "No power with the compressor's terminal cover off: a weak pin can blow out oil and gas on fire.",
  source: "hermetic service safety literature",
  fits: (scene) =>
    nearest(
      [
        3,
        said(
          scene,
          /(?:cover|cap) off[^.]*(?:start|run|power|energiz|bump)|(?:start|run|power|bump)[^.]*cover off/,
        ),
      ],
      [2, said(scene, /terminal cover|(?:broken|blown|burnt|melted) (?:terminal|pin)/)],
      [1, said(scene, /terminal (?:block|pins?)|at the pins/)],
    ),
};
