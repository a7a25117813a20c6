import type { Finding, Level } from "../../model.ts";
import {
  insulationFloorOhm,
  testVoltageRangeV,
  thermosettingRangeCel,
} from "../../physics/insulation.ts";
import { ownBasis, ownSource } from "../own-limit.ts";
import type { Scene } from "../scene.ts";
import { fahrenheitWords, ohmWords } from "../words.ts";
import {
  type Corrected,
  corrected,
  isThroughWiring,
  type Leads,
  lowestWords,
} from "./insulation-leads.ts";
import { belowFloorsOhm, tierSign } from "./insulation-tier.ts";

/** Ohm. Below it every published floor is broken. Source: guidance for some scroll compressors. */
const groundFaultOhm = 0.5e6;

/** Whether it is a ground fault, corrected both ways. */
export function floorFinding(leads: Leads, scene: Scene): Finding {
  const at40 = corrected(leads);
  const usual = unproven(leads, scene, floorVerdict(leads, at40, scene));
  const own = scene.limits.insulation?.least;
  const verdict = own === undefined ? usual : underOwnFloor(usual, at40, own);
  return {
    about: leads.about,
    check: "insulation",
    level: verdict.level,
    brief: verdict.brief,
    says: [`Lowest lead ${lowestWords(leads)}`, temperatureWords(leads, at40), verdict.says]
      .concat(voltageWords(leads, scene))
      .filter((one) => one !== "")
      .join(", "),
    values: at40.values,
    basis: own === undefined || verdict.published === true ? "IEEE 43" : ownBasis,
    source: own === undefined ? floorSource : ownSource(floorSource),
    signs: [verdict.sign],
  };
}

const floorSource =
  "IEEE 43-2013 12.3 (5 megohm at 40 C, random-wound below 1 kV) and 6.3 (both corrections); it was written for motors in air, so a floor and no grade for a hermetic one";

/**
 * The company's own floor in place of the published one. A looser one takes no verdict of a broken
 * published floor back: both are said then, and somebody has to look.
 */
function underOwnFloor(usual: Verdict, { lowOhm, highOhm }: Corrected, ownOhm: number): Verdict {
  const own = `the company's own floor of ${ohmWords(ownOhm)}`;
  const faulty = usual.sign.startsWith("insulation:ground_fault");
  const brief = (side: string): string => `${side} the company's floor of ${ohmWords(ownOhm)}`;
  if (highOhm < ownOhm) {
    const isWorse = usual.level === "bad";
    const says = isWorse ? `${usual.says}, and below ${own}` : `below ${own} (IEEE 43: 5)`;
    // a fault that stays to be proven stays so
    if (faulty) return { ...usual, says };
    return { ...usual, level: "bad", brief: brief("below"), says };
  }
  if (lowOhm < ownOhm) {
    const says = `above or below ${own} depending on the correction rule: test again between 20 and 40 C`;
    return { ...usual, level: "watch", brief: brief("above or below"), says };
  }
  if (usual.level === "good")
    return { ...usual, brief: brief("above"), says: `no ground fault, above ${own} (IEEE 43: 5)` };
  return {
    ...usual,
    level: faulty ? usual.level : "watch",
    says: `above ${own}, but ${usual.says} by IEEE 43`,
    published: true,
  };
}

interface Verdict {
  readonly level: Level;
  readonly brief: string;
  readonly says: string;
  readonly sign: string;
  /** the published floor decides though the company has one of its own */
  readonly published?: true;
}

function floorVerdict(leads: Leads, at40: Corrected, scene: Scene): Verdict {
  const raw = leads.lowestOhm;
  if (raw < groundFaultOhm && at40.lowOhm < insulationFloorOhm)
    return {
      level: "bad",
      brief: "a ground fault on every floor",
      says: "a ground fault on every published floor",
      sign: "insulation:ground_fault",
    };
  if (at40.highOhm < insulationFloorOhm && raw >= belowFloorsOhm && isHotUnmeasured(leads, scene))
    return {
      level: "watch",
      brief: "low, but hot: give the winding temperature",
      says: "below 5 megohm as read, but a hot winding reads low: give its temperature or test again cold",
      sign: "insulation:very_low",
    };
  if (at40.highOhm < insulationFloorOhm)
    return {
      level: "bad",
      brief: raw < belowFloorsOhm ? "below most floors" : "below the floor of 5 megohm",
      says: raw < belowFloorsOhm ? "below most published floors" : "below the floor of 5 megohm",
      sign: raw < belowFloorsOhm ? "insulation:below_floors" : "insulation:very_low",
    };
  if (at40.lowOhm < insulationFloorOhm)
    return {
      level: "watch",
      brief: "above or below 5 megohm by the correction rule",
      says: "above or below the floor of 5 megohm depending on the correction rule: test again between 20 and 40 C",
      sign: "insulation:very_low",
    };
  return {
    level: "good",
    brief: "no ground fault",
    says: "no ground fault (floor 5 megohm)",
    sign: tierSign(leads),
  };
}

/** Said to be hot, without a figure. */
function isHotUnmeasured(leads: Leads, scene: Scene): boolean {
  if (leads.windingCel !== undefined) return false;
  return (
    scene.seen.some((one) => one.observation === "shell_hot") ||
    /(?:just|right) (?:came off|after|off line|shut)|still hot|hot (?:motor|winding|comp)/.test(
      scene.words,
    )
  );
}

/** A ground fault on one lead, or anything low with wiring still landed, stays to be proven. */
function unproven(leads: Leads, scene: Scene, verdict: Verdict): Verdict {
  const fault = verdict.sign === "insulation:ground_fault";
  if (isThroughWiring(scene) && verdict.sign !== "insulation:sound")
    return {
      level: "watch",
      brief: "low, but lift the leads and repeat",
      says: `${verdict.says}, but lift the leads and repeat: wiring, contactor and drive are in parallel`,
      // else the measurement itself is in doubt, as where leads differ
      sign: fault ? unprovenFault : "insulation:leads_disagree",
    };
  if (!fault || leads.count !== 1 || scene.facts.phases === 1) return verdict;
  return {
    level: verdict.level,
    brief: "low, repeat it on the other leads",
    says: `${verdict.says}, but repeat it on the other leads: joined windings must agree`,
    sign: unprovenFault,
  };
}

const unprovenFault = "insulation:ground_fault_unproven";

function temperatureWords(leads: Leads, at40: Corrected): string {
  if (!Number.isFinite(leads.lowestOhm)) return "";
  const { windingCel } = leads;
  if (windingCel === undefined) return "not corrected, no winding temperature given";
  const { from, to } = thermosettingRangeCel;
  const outside = windingCel < from || windingCel > to;
  const range =
    at40.lowOhm === at40.highOhm
      ? about(at40.lowOhm)
      : `${about(at40.lowOhm)} to ${about(at40.highOhm)}`;
  const warmth = fahrenheitWords(windingCel);
  return outside
    ? `${warmth} lies outside the correction range, roughly ${range} at 40 C`
    : `${range} at 40 C from ${warmth}`;
}

/** A correction by rule earns two digits. */
function about(ohm: number): string {
  return ohmWords(Number(ohm.toPrecision(2)));
}

function voltageWords(leads: Leads, scene: Scene): string[] {
  const ratedV = scene.facts.supply_V;
  if (leads.testV === undefined || ratedV === undefined) return [];
  const wanted = testVoltageRangeV(ratedV);
  if (wanted === undefined || (leads.testV >= wanted.from && leads.testV <= wanted.to)) return [];
  return [`tested at ${leads.testV} V where ${wanted.from} V is the rule, so compare with care`];
}
