import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

/** "o2 8.2", "oxygen is 7": a share of the flue gas is nothing that is blown in. */
const blown =
  /shop air|compressed air|air compressor|(?:oxygen|\bo2\b)(?! ?(?:is |at |reads? |level|sensor|of )?[\d.%])/;

export const noOxygen: CautionRule = {
  id: "no_oxygen",
  severity: "danger",
  says: "Never oxygen or compressed air in a refrigerant circuit: with oil it can explode. Dry nitrogen only.",
  source: "ANSI/ASHRAE 15",
  fits: (scene) => nearest([3, said(scene, blown)]),
};
