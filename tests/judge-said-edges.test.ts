import type { EquipmentFacts } from "../src/model.ts";
import { split } from "./support/judged-notes.ts";
import { climbSaid, type SaidStairs } from "./support/stairs.ts";

/** Figures as notes tell them, just before, at and just behind where a verdict turns, each with its source. */

const practice = "common practice";
const motor: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };
const drive: EquipmentFacts = { drive: "inverter", phases: 3, supply_V: 460 };
const single: EquipmentFacts = { drive: "line", phases: 1, supply_V: 230 };
const rooftop: EquipmentFacts = { ...split, kind: "rooftop unit" };
const cooler: EquipmentFacts = {
  ...{ kind: "walk-in cooler", drive: "line", refrigerant: "R-404A" },
  metering: "expansion_valve",
};
/** 15 lb are 6.80 kg. */
const small = (charge_kg: number): EquipmentFacts => ({ refrigerant: "R-410A", charge_kg });
const emptied = "recovered 5 kg, charged 5.5 kg, last addition was 365 days ago";

const edges: readonly SaidStairs[] = [
  {
    ...{ what: "V of a communication pair: up to 2 it is dead", check: "communication" },
    ...{ source: practice, equipment: { drive: "inverter" } },
    says: (value) => [`comm pair ${value} V dc at the outdoor`],
    steps: [
      [1.9, "bad communication:dead_part"],
      [2, "bad communication:dead_part"],
      [2.1, "good communication:alive"],
    ],
  },
  {
    ...{ what: "V beside the pair: over 60 it is none of the pair's", check: "communication" },
    ...{ source: practice, equipment: { drive: "inverter" } },
    says: (value) => [`comm pair ${value} V dc at the outdoor`],
    steps: [
      [59, "good communication:alive"],
      [60, "good communication:alive"],
      [61, ""],
    ],
  },
  {
    ...{ what: "two pairs by name on 460 V: under 0.65 a phase is lost", check: "supply" },
    ...{ source: practice, equipment: motor },
    says: (value) => [`L1-L2 ${value}, L2-L3 ${value}`],
    steps: [
      [298, "bad supply:phase_lost"],
      [299, "bad supply:low"],
      [300, "bad supply:low"],
    ],
  },
  {
    ...{ what: "three lines: under 60 V there is no supply", check: "supply" },
    ...{ source: practice, equipment: motor },
    says: (value) => [`L1-L2 ${value}, L2-L3 ${value}, L1-L3 ${value} at the disconnect`],
    steps: [
      [59, "bad supply:dead"],
      [60, "good, bad supply:low"],
      [61, "good, bad supply:low"],
    ],
  },
  {
    ...{ what: "the highest leg to neutral, the others 120 V", check: "supply" },
    source: "delta geometry: sqrt(3), from 1.6 times",
    equipment: motor,
    says: (value) => [`L1-N 120, L2-N 120, L3-N ${value}`],
    steps: [
      [191, "bad joint:connection_loose"],
      [192, "good supply:sound"],
      [193, "good supply:sound"],
    ],
  },
  {
    ...{ what: "kilohms of a like sensor, the first 20: twice is off", check: "sensor" },
    ...{ source: practice, equipment: {} },
    says: (value) => ["coil sensor reads 20k", `same sensor in room 12 is ${value}k`],
    steps: [
      [10.1, "unknown, unknown"],
      [10, "unknown, unknown"],
      [9.9, "bad sensor:off"],
    ],
  },
  {
    ...{ what: "head beside a start, suction 100 psi", check: "start_current" },
    ...{ source: practice, equipment: motor },
    says: (value) => [`start 128 A inrush, then 15, suction 100 psi head ${value} psi`],
    steps: [
      [107, "good start:line_start start_pressures:pressures_equal"],
      [108, "good start:line_start start_pressures:pressures_equal"],
      [109, "good start:line_start"],
      [149, "good start:line_start"],
      [150, "good start:line_start start_pressures:pressures_unequal"],
      [151, "good start:line_start start_pressures:pressures_unequal"],
    ],
  },
  {
    ...{ what: "V of a drive that is told to run: under 5 it is none", check: "bridge" },
    ...{ source: practice, equipment: drive },
    says: (value) => [`drive is commanded to run, output U-V 4 V, V-W 4 V, U-W ${value} V`],
    steps: [
      [4.9, "bad output:none"],
      [5, "bad output:unbalanced"],
      [5.1, "bad output:unbalanced"],
    ],
  },
  {
    ...{ what: "ohms of a contactor's coil: under 1 it is shorted", check: "contactor" },
    ...{ source: practice, equipment: motor },
    says: (value) => [`contactor coil reads ${value} ohm`],
    steps: [
      [0.9, "bad contactor:coil_open"],
      [1, "good contactor:coil_sound"],
      [1.1, "good contactor:coil_sound"],
    ],
  },
  {
    ...{ what: "V on the coil of a contactor that is told welded", check: "contactor" },
    ...{ source: practice, equipment: motor },
    says: (value) => [`contactor welded, ${value} V on its coil`],
    steps: [
      [4.9, "bad contactor:welded"],
      [5, ""],
      [5.1, ""],
    ],
  },
  {
    ...{ what: "A beside 90 V across the contacts: over 3 a motor runs", check: "contactor" },
    ...{ source: practice, equipment: motor },
    says: (value) => [`90 V across the contacts, ${value} amps`],
    steps: [
      [2.9, "watch contactor:drop"],
      [3, "watch contactor:drop"],
      [3.1, ""],
    ],
  },
  {
    ...{ what: "V behind a contactor that is in, 480 ahead: 0.3 lost", check: "contactor" },
    ...{ source: practice, equipment: motor },
    says: (value) => [`contactor pulled in, line side 480, load side ${value}`],
    steps: [
      [337, "bad contactor:drop"],
      [336, "bad contactor:pole_open"],
      [335, "bad contactor:pole_open"],
    ],
  },
  {
    ...{ what: "ohms of a run winding: under 0.1 it is shorted", check: "winding" },
    ...{ source: practice, equipment: single },
    says: (value) => [`C-R ${value} ohm, C-S 2.9 ohm, R-S 3.0 ohm`],
    steps: [
      [0.09, "bad winding:shorted"],
      [0.1, "good winding:balanced"],
      [0.11, "good winding:balanced"],
    ],
  },
  {
    ...{ what: "a display's bus against a meter's 650 V: a tenth apart", check: "dc_bus" },
    ...{ source: practice, equipment: drive },
    says: (value) => [
      `drive shows ${value} on the bus`,
      "my meter reads 650 on the bus, line 480 481 482 running",
    ],
    steps: [
      [586, "good bus:sound"],
      [585, "good bus:sound"],
      [584, "good bus:sound, watch drive_code:control_fault"],
    ],
  },
  {
    ...{ what: "megohms of one lead, the others 600: four times apart", check: "insulation" },
    ...{ source: practice, equipment: motor },
    says: (value) => [`T1 600 meg, T2 ${value} meg, T3 600 meg to ground`],
    steps: [
      [151, "good insulation:sound"],
      [150, "good insulation:sound"],
      [149, "watch insulation:leads_disagree"],
    ],
  },
  {
    ...{ what: "the least of three leads, the others 2100 megohm", check: "insulation" },
    ...{ source: practice, equipment: motor },
    says: (value) => [`T1 2100 meg, T2 ${value} meg, T3 2100 meg to ground`],
    steps: [
      [501, "good insulation:sound"],
      [500, "good insulation:sound"],
      [499, "watch insulation:leads_disagree"],
    ],
  },
  {
    ...{
      what: "suction of R-410A in comfort cooling, no air read: 34 to 52 F",
      check: "saturation",
    },
    ...{ source: practice, equipment: rooftop },
    says: (value) => [`suction ${value} psi`],
    steps: [
      [104.9, "watch suction:low"],
      [105.6, "good suction:usual"],
      [147.7, "good suction:usual"],
      [148.4, "watch suction:high"],
    ],
  },
  {
    ...{ what: "head of R-410A in comfort cooling, no air read: 72 to 129 F", check: "saturation" },
    ...{ source: practice, equipment: rooftop },
    says: (value) => [`head ${value} psi`],
    steps: [
      [206, "watch head:low"],
      [209, "good head:usual"],
      [470, "good head:usual"],
      [473, "watch head:high"],
    ],
  },
  {
    ...{ what: "suction of R-404A in a cooler, no box read: 12 to 34 F", check: "saturation" },
    ...{ source: practice, equipment: cooler },
    says: (value) => [`suction ${value} psi`],
    steps: [
      [45.3, "watch suction:low"],
      [45.6, "good suction:usual"],
      [75.2, "good suction:usual"],
      [75.6, "watch suction:high"],
    ],
  },
  {
    ...{ what: "kg of a full charge that was emptied and filled again", check: "leak_rate" },
    source: "40 CFR 84.106(a): 15 lb",
    ...{ equipment: small, says: () => [emptied] },
    steps: [
      [6.79, ""],
      [6.81, "good leak_rate:under added:again"],
      [6.9, "good leak_rate:under added:again"],
    ],
  },
  {
    ...{ what: "suction over head, psi: more than 2 percent over", check: "saturation" },
    ...{ source: practice, equipment: { ...split, refrigerant: "R-407C" } },
    says: (value) => [`suction 100 psi head ${value} psi running`],
    steps: [
      [97, "unknown physics:contradicts"],
      [98, "watch suction:high, watch head:low"],
      [99, "watch suction:high, watch head:low"],
    ],
  },
];

climbSaid(edges);
