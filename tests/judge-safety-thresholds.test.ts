import type { EquipmentFacts } from "../src/model.ts";
import { split } from "./support/judged-notes.ts";
import { climbSaid, type SaidStairs } from "./support/stairs.ts";

/** Where a figure begins to cost money or to hurt: just before and just behind, each with its source. */

const practice = "common practice";
const motor: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };
const zones: EquipmentFacts = { drive: "inverter", kind: "VRF", refrigerant: "R-410A" };

const leaky = (use: EquipmentFacts["use"]): EquipmentFacts => ({
  ...{ refrigerant: "R-404A", charge_kg: 100, leak_regime: "us_84" },
  ...(use === undefined ? {} : { use }),
});
const added = (kg: number) => `added ${kg} kg, last addition was 365 days ago`;
const codes = "40 CFR 84.106(c): a rate just equal to the threshold is not over it";

const edges: readonly SaidStairs[] = [
  {
    ...{ what: "a year's loss of comfort cooling, percent", check: "leak_rate", source: codes },
    ...{ equipment: leaky("comfort_cooling"), says: added },
    steps: [
      [10, "good leak_rate:under added:again"],
      [10.1, "bad leak_rate:over added:again"],
    ],
  },
  {
    ...{ what: "a year's loss of commercial refrigeration", check: "leak_rate", source: codes },
    ...{ equipment: leaky("commercial_refrigeration"), says: added },
    steps: [
      [20, "good leak_rate:over added:again"],
      [20.1, "bad leak_rate:over added:again"],
    ],
  },
  {
    ...{ what: "a year's loss of an industrial process", check: "leak_rate", source: codes },
    ...{ equipment: leaky("industrial_process"), says: added },
    steps: [
      [30, "good leak_rate:over added:again"],
      [30.1, "bad leak_rate:over added:again"],
    ],
  },
  {
    ...{ what: "volts at a coil of a 120 V circuit", check: "control_voltage" },
    source: "NEMA ICS 2: a coil works from 85 to 110 percent, from memory",
    equipment: motor,
    says: (value) => `${value} volts at the contactor coil`,
    steps: [
      [101, "bad control:low"],
      [102, "good control:present"],
      [132, "good control:present"],
      [133, "watch control:present"],
    ],
  },
  {
    ...{ what: "volts at the coil of a contactor that stays out", check: "contactor" },
    source: "NEMA ICS 2: a coil works from 85 percent, from memory",
    equipment: motor,
    says: (value) => `contactor won't pull in with ${value} volts at its coil`,
    steps: [
      [101, "watch contacts:contactor_not_pulling_in"],
      [102, "bad contactor:no_pull_in, watch contacts:contactor_not_pulling_in"],
    ],
  },
  {
    ...{
      what: "volts that may be a control circuit's of 120 V",
      check: "control_voltage",
      source: practice,
    },
    equipment: motor,
    says: (value) => `${value} volts at the contactor coil`,
    steps: [
      [140, "watch control:present"],
      [141, ""],
    ],
  },
  {
    ...{ what: "megohms of one lead, the others 60", check: "insulation" },
    source: "first principles: leads joined inside agree; twice is common practice",
    equipment: motor,
    says: (value) => `megged to ground at 500 volts: T1 ${value} meg, T2 60 meg, T3 60 meg`,
    steps: [
      [30, "watch insulation:low, watch insulation:low"],
      [29, "watch insulation:leads_disagree"],
    ],
  },
  {
    ...{ what: "megohms where it was 1000 a year ago", check: "insulation" },
    source: "common practice: half is stable, a tenth has fallen far",
    equipment: motor,
    says: (value) => `megged ${value} meg on all three to ground, last year it was 1000 meg`,
    steps: [
      [500, "good insulation:sound, good"],
      [499, "watch insulation:sound, watch insulation:falling"],
      [101, "watch insulation:sound, watch insulation:falling"],
      [99, "watch insulation:low, watch insulation:low, watch insulation:fallen_far"],
    ],
  },
  {
    ...{ what: "megohms through a contactor", check: "insulation" },
    source: "Ohm's law: what hangs on the leads is in parallel",
    equipment: motor,
    says: (value) => `megged through the contactor, ${value} meg on all three`,
    steps: [
      [0.4, "watch insulation:ground_fault_unproven"],
      [0.6, "watch insulation:leads_disagree"],
      [99, "watch insulation:leads_disagree"],
      [101, "good insulation:sound"],
    ],
  },
  {
    ...{ what: "percent that one zone's valve is open", check: "charge", source: practice },
    equipment: zones,
    says: (value) => `indoor 4 valve ${value} %, all valves looked at`,
    steps: [
      [0, ""],
      [1, "watch openings:narrow"],
    ],
  },
  {
    ...{ what: "a discharge line, F", check: "discharge_temperature", source: practice },
    equipment: split,
    says: (value) => `discharge line ${value} F running`,
    steps: [
      [225, "watch discharge:usual"],
      [226, "bad discharge:hot"],
    ],
  },
];

climbSaid(edges);
