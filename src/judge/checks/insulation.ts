import type { Finding, Level, Reading } from "../../model.ts";
import {
  halvingFactor,
  insulationBaseCel,
  insulationFloorOhm,
  testVoltageRangeV,
  thermosettingFactor,
  thermosettingRangeCel,
} from "../../physics/insulation.ts";
import type { Check } from "../check.ts";
import { beside } from "../near.ts";
import { bySubject, hasPoint, isBound, numberOf, ofQuantity, setsOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { fahrenheitWords, ohmWords } from "../words.ts";
import { insulationTrend } from "./insulation-trend.ts";
import { told } from "./told.ts";

/** Ohm. Below it every published floor is broken. Source: guidance for some scroll compressors. */
const groundFaultOhm = 0.5e6;
/** Ohm. Below it most published floors are broken. Source: a hermetic service handbook. */
const belowFloorsOhm = 2e6;
/** Ohm, raw readings. Source: common practice, no source. */
const veryLowOhm = 20e6;
const moistOhm = 50e6;
const cleanOhm = 100e6;
/** Largest lead over smallest before the measurement itself is in doubt. Source: first principles. */
const leadSpread = 2;

/** One compressor's leads to ground, at one minute. */
interface Leads {
  readonly about: string;
  readonly lowestOhm: number;
  readonly highestOhm: number;
  /** the lowest is only a lower bound */
  readonly bound: boolean;
  readonly count: number;
  /** Cel, of the winding */
  readonly windingCel?: number;
  readonly testV?: number;
}

/**
 * Insulation to ground: the floor of IEEE 43 (corrected both ways), contamination by the raw value,
 * trend against the unit's earlier tests, and the leads against each other, as findings apart.
 */
export const insulation: Check = {
  name: "insulation",
  signs: [
    "insulation:sound",
    "insulation:low",
    "insulation:very_low",
    "insulation:below_floors",
    "insulation:ground_fault",
    "insulation:ground_fault_unproven",
    "insulation:leads_disagree",
    "insulation:falling",
    "insulation:fallen_far",
  ],
  judge: (scene) => [...measured(scene), ...told(scene, "insulation")],
};

function measured(scene: Scene): Finding[] {
  return bySubject(toGround(scene), "compressor").flatMap(([about, readings]) => {
    const leads = decisiveLeads(about, readings, scene);
    if (leads === undefined) return [];
    if (disagree(leads)) return [spreadFinding(leads)];
    return [floorFinding(leads, scene), ...tierFinding(leads), ...insulationTrend(leads, scene)];
  });
}

function toGround(scene: Scene): Reading[] {
  const megohms = ofQuantity(scene.readings, "insulation_resistance").filter(
    (one) => one.points === undefined || hasPoint(one, "ground"),
  );
  const ohms = ofQuantity(scene.readings, "winding_resistance", "resistance").filter(
    (one) => hasPoint(one, "ground") && one.over_range !== true,
  );
  return [...megohms, ...ohms];
}

/** A retest that climbs by more, once warmed or dried, decides. Common practice, no source. */
const climbs = 3;

/**
 * Of several tests the lowest counts; where the winding was warmed or dried between them, the
 * highest: what climbed was refrigerant or water.
 */
function decisiveLeads(
  about: string,
  readings: readonly Reading[],
  scene: Scene,
): Leads | undefined {
  const oneMinute = readings.filter((one) => one.after_s === undefined || isOneMinute(one.after_s));
  const used = oneMinute.length > 0 ? oneMinute : readings;
  const all = leadsOf(about, used, scene);
  const tests = setsOf(scene.notes, used)
    .flatMap((set) => leadsOf(about, set, scene) ?? [])
    .sort((a, b) => a.lowestOhm - b.lowestOhm);
  const low = tests[0];
  const high = tests[tests.length - 1];
  if (low === undefined || high === undefined || all === undefined) return all;
  if (wiringAside(low, high, scene)) return high;
  const warmed = /heater (?:was |has been )?on|warm(?:ed)? (?:it|up)|dried|hours? later/.test(
    scene.words,
  );
  if (warmed && high.count >= low.count && high.lowestOhm > climbs * low.lowestOhm) return high;
  return all;
}

/** The lower test held wiring that the higher one had off: the lower tells of the wiring. */
function wiringAside(low: Leads, high: Leads, scene: Scene): boolean {
  const wordsOf = (ohm: number) =>
    scene.notes
      .filter((note) => note.readings.some((one) => numberOf(one) === ohm))
      .map((note) => note.text ?? "")
      .join(" ");
  return off.test(wordsOf(high.lowestOhm)) && !off.test(wordsOf(low.lowestOhm));
}

const off =
  /at the (?:pins|compressor|comp)\b|(?:leads?|wires?|cable|plug) (?:is |are )?(?:off|pulled|lifted)|lifted|unplugged/i;

function leadsOf(about: string, all: readonly Reading[], scene: Scene): Leads | undefined {
  const values = all.flatMap((one) => numberOf(one) ?? (isBound(one) ? Infinity : []));
  if (values.length === 0) return;
  const lowestOhm = Math.min(...values);
  const lowest = all.find((one) => (numberOf(one) ?? Infinity) === lowestOhm);
  const windingCel = windingCelOf(all, scene);
  const testV = all.find((one) => one.test_voltage !== undefined)?.test_voltage;
  return {
    about,
    lowestOhm,
    highestOhm: Math.max(...values),
    bound: lowest === undefined || isBound(lowest),
    count: values.length,
    ...(windingCel === undefined ? {} : { windingCel }),
    ...(testV === undefined ? {} : { testV }),
  };
}

/** s; the value that counts is read at 60 s. Source: IEEE 43-2013, 5.2. */
function isOneMinute(afterS: number): boolean {
  return afterS >= 45 && afterS <= 90;
}

function windingCelOf(readings: readonly Reading[], scene: Scene): number | undefined {
  const own = readings.find((one) => one.temperature !== undefined)?.temperature;
  if (own !== undefined) return own;
  const shell = ofQuantity(scene.readings, "temperature").find(
    (one) => one.at === "shell" || /winding|shell|motor|dome/.test(beside(scene, one, [18, 12])),
  );
  return shell === undefined ? undefined : numberOf(shell);
}

/** The verdict differs from lead to lead, which joined windings cannot do. */
function disagree(leads: Leads): boolean {
  const far = leads.highestOhm / Math.max(leads.lowestOhm, 1) > leadSpread;
  return far && !leads.bound && leads.lowestOhm < cleanOhm && leads.highestOhm >= veryLowOhm;
}

function spreadFinding(leads: Leads): Finding {
  return {
    about: leads.about,
    check: "insulation",
    level: "watch",
    brief: "the leads differ and must agree, repeat the test",
    says: `The leads differ, ${ohmWords(leads.lowestOhm)} against ${highestWords(leads)}, but they are joined inside and must agree: doubt the measurement first. Ground the winding, clean and dry the terminals, wait a minute a lead, and repeat`,
    values: {},
    basis: "joined windings",
    source:
      "first principles: leads joined inside read the same insulation; common practice, no source",
    signs: ["insulation:leads_disagree"],
  };
}

function highestWords(leads: Leads): string {
  return Number.isFinite(leads.highestOhm) ? ohmWords(leads.highestOhm) : "over range";
}

function lowestWords(leads: Leads): string {
  if (!Number.isFinite(leads.lowestOhm)) return "over range";
  return `${leads.bound ? "more than " : ""}${ohmWords(leads.lowestOhm)}`;
}

interface Corrected {
  readonly values: Readonly<Record<string, number>>;
  readonly lowOhm: number;
  readonly highOhm: number;
}

/** The lowest lead at 40 C by both rules; without a temperature as it was read. */
function corrected(leads: Leads): Corrected {
  const { lowestOhm, windingCel } = leads;
  if (windingCel === undefined || !Number.isFinite(lowestOhm))
    return { values: {}, lowOhm: lowestOhm, highOhm: lowestOhm };
  const halving = lowestOhm * halvingFactor(windingCel);
  const factor = thermosettingFactor(windingCel);
  if (factor === undefined)
    return {
      values: { at_40C_Ohm: halving },
      lowOhm: Math.min(halving, lowestOhm),
      highOhm: Math.max(halving, lowestOhm),
    };
  const flat = lowestOhm * factor;
  return {
    values: { at_40C_Ohm: halving, at_40C_thermosetting_Ohm: flat },
    lowOhm: Math.min(halving, flat),
    highOhm: Math.max(halving, flat),
  };
}

function floorFinding(leads: Leads, scene: Scene): Finding {
  const at40 = corrected(leads);
  const verdict = unproven(leads, scene, floorVerdict(leads, at40));
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
    basis: "IEEE 43",
    source:
      "IEEE 43-2013 12.3 (5 megohm at 40 C, random-wound below 1 kV) and 6.3 (both corrections); it was written for motors in air, so a floor and no grade for a hermetic one",
    signs: [verdict.sign],
  };
}

interface Verdict {
  readonly level: Level;
  readonly brief: string;
  readonly says: string;
  readonly sign: string;
}

function floorVerdict(leads: Leads, at40: Corrected): Verdict {
  const raw = leads.lowestOhm;
  if (raw < groundFaultOhm && at40.lowOhm < insulationFloorOhm)
    return {
      level: "bad",
      brief: "a ground fault on every floor",
      says: "a ground fault on every published floor",
      sign: "insulation:ground_fault",
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
    sign: tierSign(tierOhm(leads)),
  };
}

/** A ground fault on one lead, or with wiring still landed, stays to be proven. */
function unproven(leads: Leads, scene: Scene, verdict: Verdict): Verdict {
  const landed =
    /leads? (?:still )?(?:landed|connected|on\b)|still (?:landed|wired|connected)/.test(
      scene.words,
    );
  const single = leads.count === 1 && scene.facts.phases !== 1;
  if (verdict.sign !== "insulation:ground_fault" || (!landed && !single)) return verdict;
  const wanted = landed
    ? "lift the leads and repeat: wiring and contactor are in parallel"
    : "repeat it on the other leads: joined windings must agree";
  return {
    level: landed ? "watch" : verdict.level,
    brief: landed ? "low, but lift the leads and repeat" : "low, repeat it on the other leads",
    says: `${verdict.says}, but ${wanted}`,
    sign: "insulation:ground_fault_unproven",
  };
}

/** The raw value grades contamination; a hot winding is graded by the flatter correction it has. */
function tierOhm(leads: Leads): number {
  const { windingCel } = leads;
  if (windingCel === undefined || windingCel <= insulationBaseCel) return leads.lowestOhm;
  const at40 = corrected(leads);
  return windingCel > thermosettingRangeCel.to ? at40.highOhm : at40.lowOhm;
}

function tierSign(ohm: number): string {
  if (ohm >= cleanOhm) return "insulation:sound";
  return ohm >= veryLowOhm ? "insulation:low" : "insulation:very_low";
}

function tierFinding(leads: Leads): Finding[] {
  const ohm = tierOhm(leads);
  if (ohm >= cleanOhm || leads.lowestOhm < belowFloorsOhm) return [];
  const degree = ohm >= moistOhm ? "some moisture or dirt" : "much moisture or dirty oil";
  return [
    {
      about: leads.about,
      check: "insulation",
      level: "watch",
      brief: degree,
      says: `Lowest lead ${lowestWords(leads)} speaks for ${degree}: warm the crankcase, test the oil for acid, change the drier and test again before any verdict`,
      values: {},
      basis: "common practice",
      source:
        "common practice, no source: tiers of 100, 50 and 20 megohm on the raw reading at 500 V",
      signs: [tierSign(ohm)],
    },
  ];
}

function temperatureWords(leads: Leads, at40: Corrected): string {
  if (!Number.isFinite(leads.lowestOhm)) return "";
  const { windingCel } = leads;
  if (windingCel === undefined) return "not corrected, no winding temperature given";
  const { from, to } = thermosettingRangeCel;
  const outside = windingCel < from || windingCel > to;
  const range =
    at40.lowOhm === at40.highOhm
      ? ohmWords(at40.lowOhm)
      : `${ohmWords(at40.lowOhm)} to ${ohmWords(at40.highOhm)}`;
  const warmth = fahrenheitWords(windingCel);
  return outside
    ? `${warmth} lies outside the correction range, roughly ${range} at 40 C`
    : `${range} at 40 C from ${warmth}`;
}

function voltageWords(leads: Leads, scene: Scene): string[] {
  const ratedV = scene.facts.supply_V;
  if (leads.testV === undefined || ratedV === undefined) return [];
  const wanted = testVoltageRangeV(ratedV);
  if (wanted === undefined || (leads.testV >= wanted.from && leads.testV <= wanted.to)) return [];
  return [`tested at ${leads.testV} V where ${wanted.from} V is the rule, so compare with care`];
}
