import type { Finding } from "../../model.ts";
import { insulationBaseCel, thermosettingRangeCel } from "../../physics/insulation.ts";
import { ownBasis, ownSource } from "../own-limit.ts";
import type { Scene } from "../scene.ts";
import { corrected, type Leads, lowestWords } from "./insulation-leads.ts";

/** Ohm; below it most published floors are broken. Source: a hermetic service handbook. */
export const belowFloorsOhm = 2e6;
/** Ohm, raw readings. Source: common practice, no source. */
export const veryLowOhm = 20e6;
const moistOhm = 50e6;
export const cleanOhm = 100e6;

/** The raw value grades contamination; a hot winding is graded by the flatter correction it has. */
function tierOhm(leads: Leads): number {
  const { windingCel } = leads;
  if (windingCel === undefined || windingCel <= insulationBaseCel) return leads.lowestOhm;
  const at40 = corrected(leads);
  return windingCel > thermosettingRangeCel.to ? at40.highOhm : at40.lowOhm;
}

/** The sign of the tier that the leads are in. */
export function tierSign(leads: Leads): string {
  const ohm = tierOhm(leads);
  if (ohm >= cleanOhm) return "insulation:sound";
  return ohm >= veryLowOhm ? "insulation:low" : "insulation:very_low";
}

const tierSource =
  "common practice, no source: tiers of 100, 50 and 20 megohm on the raw reading at 500 V";

/** The gist of the first tier below clean. */
export const someMoisture = "some moisture or dirt";

/** How wet or dirty it is, by the raw value. */
export function tierFinding(leads: Leads, scene: Scene): Finding[] {
  const ohm = tierOhm(leads);
  const own = scene.limits.insulation_clean?.least;
  if (ohm >= (own ?? cleanOhm) || leads.lowestOhm < belowFloorsOhm) return [];
  const degree = ohm >= moistOhm ? someMoisture : "much moisture or dirty oil";
  return [
    {
      about: leads.about,
      check: "insulation",
      level: "watch",
      brief: degree,
      says: `Lowest lead ${lowestWords(leads)} speaks for ${degree}: warm the crankcase, test the oil for acid, change the drier and test again before any verdict`,
      values: {},
      basis: own === undefined ? "common practice" : ownBasis,
      source: own === undefined ? tierSource : ownSource(tierSource),
      signs: [tierSign(leads)],
    },
  ];
}
