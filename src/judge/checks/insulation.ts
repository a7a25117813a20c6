import type { Finding, Reading } from "../../model.ts";
import type { Check } from "../check.ts";
import { noteWords } from "../near.ts";
import { forPump, isOfPump } from "../own-motor.ts";
import { bySubject, numbersOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { ohmWords } from "../words.ts";
import { floorFinding } from "./insulation-floor.ts";
import {
  decisiveLeads,
  highestWords,
  isThroughWiring,
  type Leads,
  toGround,
  withWiring,
} from "./insulation-leads.ts";
import { cleanOhm, someMoisture, tierFinding, veryLowOhm } from "./insulation-tier.ts";
import { insulationTrend } from "./insulation-trend.ts";
import { isFanNote } from "./motor-currents.ts";
import { told } from "./told.ts";

/** Largest lead over smallest before the measurement itself is in doubt. Source: first principles. */
const leadSpread = 2;
/** Ohm, of a power circuit's wires. Source: IEC 60364-6, 500 V, from memory. */
const cableFloorOhm = 1e6;
/** Ohm, of a new one. Source: ANSI/NETA ATS table 100.1, 600 V class, from memory. */
const cleanCableOhm = 1e8;
/** The same for leads that are all clean; above the second no spread is remarked on. Common practice, no source. */
const cleanSpread = { times: 4, belowOhm: 5e8 } as const;

/**
 * Insulation to ground: the floor of IEEE 43 (corrected both ways), contamination by the raw value,
 * trend against the unit's earlier tests, and the leads against each other, as findings apart.
 */
export const insulation: Check = {
  name: "insulation",
  examples: [
    {
      level: "good",
      notes: ["500 V megger, winding 40 C: 900 meg to ground on all three leads"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "watch",
      notes: ["500 V megger, winding 40 C: 30 meg to ground on all three leads"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "bad",
      notes: ["500 V megger, winding 40 C: 0.2 meg to ground on all three leads"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
  ],
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
    "fan:winding_open",
    "fan:winding_sound",
    "feed:grounded",
    "motor:winding_bad",
  ],
  judge: (scene) => {
    const said = told(scene, "insulation");
    return said.length > 0 ? said : measured(scene);
  },
};

function measured(scene: Scene): Finding[] {
  return bySubject(toGround(scene), "compressor").flatMap(([named, readings]) => {
    const ofFan = readings.every((one) => one.subject === undefined && isFans(scene, one));
    const about = ofFan ? "fan" : named;
    if (about === "cable") return cableFinding(readings);
    const judged = judgeLeads(about, readings, scene);
    const ofLeads = readings.every((one) => isOfPump(scene, one))
      ? forPump(judged)
      : forFan(about, judged);
    return [...ofLeads, ...wiringFinding(about, readings, scene)];
  });
}

/** A cable that nothing hangs on: each wire for itself, and nothing is said of a winding. */
function cableFinding(readings: readonly Reading[]): Finding[] {
  const ohms = numbersOf(readings);
  if (ohms.length === 0) return [];
  const lowest = Math.min(...ohms);
  return [ofCable(lowest, `The cable alone reads ${ohmWords(lowest)} to ground`)];
}

/** What the leads read with their wiring on and so much more without it is the wiring's: they lie in parallel. */
function wiringFinding(about: string, readings: readonly Reading[], scene: Scene): Finding[] {
  const low = withWiring(about, readings, scene);
  if (low === undefined || low.bound || low.lowestOhm >= cleanCableOhm) return [];
  const first = `With its wiring on ${ohmWords(low.lowestOhm)}, far more without`;
  // the winding is cleared, what feeds it is not
  return [{ ...ofCable(low.lowestOhm, first), check: "supply" }];
}

function ofCable(lowest: number, first: string): Finding {
  const row = cableRows.find((one) => lowest < one.belowOhm) ?? soundCable;
  return {
    about: "cable",
    check: "insulation",
    level: row.level,
    says: `${first}: ${row.says}`,
    brief: row.says,
    values: {},
    basis: "IEC 60364-6, ANSI/NETA",
    source:
      "IEC 60364-6: 1 megohm at 500 V for power circuits; ANSI/NETA ATS table 100.1: 100 megohm for the 600 V class; both from memory",
    signs: row.level === "bad" ? ["feed:grounded"] : [],
  };
}

const soundCable = { level: "good", says: "the cable is sound" } as const;
const cableRows = [
  { belowOhm: cableFloorOhm, level: "bad", says: "the cable itself is grounded, not the motor" },
  { belowOhm: cleanCableOhm, level: "watch", says: "wet or chafed, look along it" },
] as const;

function isFans(scene: Scene, one: Reading): boolean {
  const named = /\b(?:fan|blower)s?\b/.test(scene.words) && !/\bcomp/.test(noteWords(scene, one));
  return named && isFanNote(scene, one);
}

/** A fan's winding: its ground is the fan's fault and says nothing of the compressor. */
function forFan(about: string, findings: readonly Finding[]): Finding[] {
  if (!/fan|blower/i.test(about)) return [...findings];
  return findings.map((one) => ({
    ...one,
    signs:
      one.level === "bad"
        ? ["fan:winding_open"]
        : one.level === "good"
          ? ["fan:winding_sound"]
          : [],
  }));
}

function judgeLeads(about: string, readings: readonly Reading[], scene: Scene): Finding[] {
  const leads = decisiveLeads(about, readings, scene);
  if (leads === undefined) return [];
  if (disagree(leads)) return [spreadFinding(leads)];
  // what else hangs on the leads says nothing of the oil
  const tier = isThroughWiring(scene) ? [] : tierFinding(leads, scene);
  const trend = insulationTrend(leads, scene);
  const doubted = isMuch(tier) || trend.some((one) => one.level === "watch");
  return [withDoubt(floorFinding(leads, scene), doubted), ...tier, ...trend];
}

/** Over the floor and still doubted by dirt or by its own history: that is no clean bill. */
function withDoubt(floor: Finding, doubted: boolean): Finding {
  return doubted && floor.level === "good" ? { ...floor, level: "watch" } : floor;
}

/** More than the first tier of contamination. */
function isMuch(tier: readonly Finding[]): boolean {
  return tier.some((one) => one.brief !== someMoisture);
}

/** The leads are joined, so they cannot differ by so much. */
function disagree(leads: Leads): boolean {
  const { lowestOhm, highestOhm } = leads;
  if (leads.bound || highestOhm < veryLowOhm) return false;
  const times = highestOhm / Math.max(lowestOhm, 1);
  if (lowestOhm < cleanOhm) return times > leadSpread;
  return lowestOhm < cleanSpread.belowOhm && times > cleanSpread.times;
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
