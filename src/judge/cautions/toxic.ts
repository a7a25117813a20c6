import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const toxic: CautionRule = {
  id: "toxic",
  severity: "danger",
  says: "Refrigerant in a flame turns to acid gas, with chlorine in it to phosgene. If it stings, out, and air the place.",
  source: "refrigerant safety data; EPA 608 training material",
  fits: (scene) =>
    nearest([2, said(scene, /acid smell|\bsmoke\b|stings|burn(?:t|ed)? refrigerant/)]),
};
