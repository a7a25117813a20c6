import { describe, expect, test } from "vitest";
import { judge } from "../src/judge/judge.ts";
import type { CaseNote, EquipmentFacts } from "../src/model.ts";
import { celFromFahrenheit as cel } from "../src/physics/constants.ts";
import { saturationPa } from "../src/physics/saturation-pressure.ts";
import { caseOf, note, r } from "./case-builder.ts";
import { judgedNotes, split } from "./support/judged-notes.ts";
import { climbSaid, type SaidStairs } from "./support/stairs.ts";

/** Where verdicts turn that are told in whole notes: each figure just inside and just outside, with its source. */

const practice = "common practice";
const motor: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };
const drive: EquipmentFacts = { drive: "inverter", phases: 3, supply_V: 460 };
const single: EquipmentFacts = { drive: "line", phases: 1, supply_V: 230 };
const chiller: EquipmentFacts = {
  ...{ kind: "chiller", drive: "line", refrigerant: "R-134a" },
  ...{ metering: "expansion_valve", mode: "cooling" },
};
const rack: EquipmentFacts = {
  ...{ kind: "refrigerated case", drive: "line", refrigerant: "R-448A" },
  metering: "expansion_valve",
};
const bottle = { refrigerant: "R-410A" } as const;

const edges: readonly SaidStairs[] = [
  {
    ...{ what: "head of a wait before a start, suction 160 psi: a tenth apart stands level" },
    ...{ check: "compression", source: practice, equipment: motor },
    says: (value) => [`gave it 7 minutes, suction 160 head ${value}, started and runs`],
    steps: [
      [175, ""],
      [177, "watch ratio:flat"],
    ],
  },
  {
    ...{ what: "the second of two low pairs, the first 0.500 ohm: within 3 percent alike" },
    ...{ check: "winding", source: practice, equipment: motor },
    says: (value) => [`milliohm meter at the pins T1-T2 0.500 T2-T3 ${value} T1-T3 0.700 ohm`],
    steps: [
      [0.5145, "bad winding:two_low"],
      [0.5155, "bad winding:one_high"],
    ],
  },
  {
    ...{ what: "the third beside two of 1.000 ohm by a milliohm meter: 12 percent off the mean" },
    ...{ check: "winding", source: practice, equipment: motor },
    says: (value) => [`milliohm meter at the pins T1-T2 1.000 T2-T3 1.000 T1-T3 ${value} ohm`],
    steps: [
      [1.188, "watch winding:one_high"],
      [1.195, "bad winding:two_low"],
    ],
  },
  {
    ...{ what: "the middle of three windings, 1 and 2 ohm the others: 1.12 times the least" },
    ...{ check: "winding", source: "star of three: one lead shorted halves", equipment: motor },
    says: (value) => [`windings 1.00 ${value} 2.00 ohm at the pins`],
    steps: [
      [1.115, "bad winding:two_low"],
      [1.125, "bad winding:one_high"],
    ],
  },
  {
    ...{ what: "the highest of three windings, 1 and 1.05 ohm the others: 1.5 times the middle" },
    ...{ check: "winding", source: "star of three: one lead shorted halves", equipment: motor },
    says: (value) => [`windings 1.00 1.05 ${value} ohm at the pins`],
    steps: [
      [1.57, "bad winding:one_high"],
      [1.58, "bad winding:two_low"],
    ],
  },
  {
    ...{ what: "one of three windings, 8 ohm the others: under 0.3 of them it is shorted" },
    ...{ check: "winding", source: practice, equipment: motor },
    says: (value) => [`windings 8.00 8.00 ${value} ohm at the pins`],
    steps: [
      [2.39, "bad winding:shorted"],
      [2.41, "bad winding:one_low"],
    ],
  },
  {
    ...{ what: "return air of a poor split, F: under 64 it has little to give" },
    ...{ check: "temperature_split", source: practice, equipment: split },
    says: (value) => [`return ${value} F supply ${(value - 8).toFixed(1)} F`],
    steps: [
      [63.9, "unknown"],
      [64.1, "watch split:low"],
    ],
  },
  {
    ...{ what: "leaving water of a chiller, F: over 64.4 it leaves a condenser" },
    ...{ check: "saturation", source: practice, equipment: chiller },
    says: (value) => [`suction 35 psi, leaving water ${value} F`],
    steps: [
      [64.3, "watch suction:low"],
      [64.5, "unknown"],
    ],
  },
  {
    ...{ what: "V on the big pins of a fan's dc plug: from 140 its bus" },
    ...{ check: "control_voltage", source: practice, equipment: drive },
    says: (value) => [
      `fan plug: ${value} V dc on the big pins, 15 V dc on the control, speed pin 3.2 V. fan won't turn`,
    ],
    steps: [
      [139, "bad control:lost"],
      [141, ""],
    ],
  },
  {
    ...{ what: "V of a dc fan's own electronics: 11 to 19" },
    ...{ check: "control_voltage", source: practice, equipment: drive },
    says: (value) => [
      `fan plug: 310 V dc on the big pins, ${value} V dc on the control, speed pin 3.2 V. fan won't turn`,
    ],
    steps: [
      [10.9, "bad control:lost"],
      [11.1, ""],
      [18.9, ""],
      [19.1, "bad control:lost"],
    ],
  },
  {
    ...{ what: "V of a dc fan's speed command: under 0.5 nothing is asked of it", check: "fan" },
    ...{ source: practice, equipment: drive },
    says: (value) => [
      `fan plug: 310 V dc on the big pins, 15 V dc on the control, speed pin ${value} V. fan won't turn`,
    ],
    steps: [
      [0.49, ""],
      [0.51, "bad fan:stands_with_voltage"],
    ],
  },
  {
    ...{ what: "uF of the smaller of two ratings: under 16 it may be a fan's", check: "capacitor" },
    ...{ source: practice, equipment: single },
    says: (value) => [`dual cap ${value}/45, fan side reads 5.0 microfarad`],
    steps: [
      [15.9, "good capacitor:good, good capacitor:good, bad capacitor:low"],
      [16.1, "good capacitor:good, good capacitor:good, unknown"],
    ],
  },
  {
    ...{ what: "lb a year of a circuit of 45 kg whose use nobody told: 10 percent" },
    ...{ check: "leak_rate", source: "40 CFR 84.106(c)(2): the strictest, 10 percent" },
    equipment: { refrigerant: "R-410A", charge_kg: 45 },
    says: (value) => [`added ${value} lb, last addition was 365 days ago`],
    steps: [
      [9.9, "good leak_rate:under added:again"],
      [9.95, "bad leak_rate:over added:again"],
    ],
  },
  {
    ...{ what: "head over 150 psi of suction: under 1.3 absolute there is no lift" },
    ...{ check: "compression", source: practice, equipment: split },
    says: (value) => [`running, suction 150 psi head ${value} psi`],
    steps: [
      [199, "watch ratio:flat"],
      [200, "watch ratio:low"],
    ],
  },
  {
    ...{ what: "the middle of three volts without names, 466 and 465 the others: lost up to 0.75" },
    ...{ check: "supply", source: "three lines: a lost one is fed back through the load" },
    equipment: motor,
    says: (value) => [`volts 466 ${value} 465`],
    steps: [
      [1, "bad supply:phase_lost"],
      [16, "bad supply:phase_lost"],
      [24, "bad supply:phase_lost"],
      [59, "bad supply:phase_lost"],
    ],
  },
  {
    ...{ what: "the last of three volts without names: up to 30 it may be a control circuit's" },
    ...{ check: "supply", source: practice, equipment: motor },
    says: (value) => [`volts 466 465 ${value}`],
    steps: [
      [29, "good supply:sound"],
      [31, "bad supply:phase_lost"],
    ],
  },
  {
    ...{ what: "the others of three volts: under 200 it is no line of a machine", check: "supply" },
    ...{ source: practice, equipment: { drive: "line", phases: 3, supply_V: 208 } },
    says: (value) => [`volts ${value} 40 ${value}`],
    steps: [
      [199, "good supply:sound"],
      [201, "bad supply:phase_lost"],
    ],
  },
  {
    ...{ what: "V that a drive's board gives the fan, 460 supply: 1.3 to 1.48 of it is a bus" },
    ...{ check: "supply", source: "rectifier theory, sqrt(2)", equipment: drive },
    says: (value) => [`board gives the fan ${value} V`],
    steps: [
      [597, "bad supply:high"],
      [599, ""],
      [680, ""],
      [682, "bad supply:high"],
    ],
  },
  {
    ...{
      what: "A of all three lines, 20 rated: under 0.03 nothing runs",
      check: "running_current",
    },
    ...{ source: practice, equipment: motor },
    says: (value) => [`amps ${value} ${value} ${value} running`],
    steps: [
      [0.59, "watch current:none"],
      [0.61, "watch current:light"],
    ],
  },
  {
    ...{ what: "A of one of three lines, 20 the others: under 0.06 of them it is dead" },
    ...{ check: "running_current", source: "mot-1ph-run; common practice", equipment: motor },
    says: (value) => [`amps running 20 20 ${value}`],
    steps: [
      [1.19, "bad current:line_dead"],
      [1.21, "watch current:unbalanced"],
    ],
  },
  {
    ...{ what: "A of a fan: under 0.1 nothing flows", check: "fan", source: practice },
    equipment: split,
    says: (value) => [`cond fan amps ${value}, plate 2.0`],
    steps: [
      [0.096, "watch fan:no_current"],
      [0.104, "good fan:turns"],
    ],
  },
  {
    ...{ what: "V of the line told beside a bus of 646: 1.28 to 1.5 times it is that bus" },
    ...{ check: "dc_bus", source: "rectifier theory", equipment: drive },
    says: (value) => [`bus 646 V, ${value} in on all three`],
    steps: [
      [430, "good bus:sound, bad bus:low"],
      [432, "good bus:sound"],
      [504, "good bus:sound"],
      [506, "good bus:sound, bad bus:low"],
    ],
  },
  {
    ...{ what: "V of a bus of 480 V that runs: 1.25 and 1.48 times its line", check: "dc_bus" },
    ...{ source: "rectifier theory, 1.35 loaded", equipment: drive },
    says: (value) => [`line 480 480 480, bus ${value} V running`],
    steps: [
      [598, "bad bus:low"],
      [602, "good bus:sound"],
      [708, "good bus:sound"],
      [712, "watch bus:high"],
    ],
  },
  {
    ...{ what: "kg out of a plate charge of 10: 0.88 to 1.1", check: "charge", source: practice },
    equipment: { ...split, charge_kg: 10 },
    says: (value) => [`recovered ${value} kg, that's all that came out`],
    steps: [
      [8.79, "watch weighed:short"],
      [8.81, "good weighed:right"],
      [10.99, "good weighed:right"],
      [11.01, "watch weighed:over"],
    ],
  },
  {
    ...{ what: "head by a second manifold, 390 psi by the first: 8 percent", check: "saturation" },
    ...{ source: practice, equipment: split },
    says: (value) => [`suction 120 head 390`, `his gauges suction 120 head ${value}`],
    steps: [
      [358, "unknown physics:contradicts"],
      [360, "good suction:usual, good head:usual"],
    ],
  },
  {
    ...{
      what: "psi of gas at a line of 12 F: the suction's where it is colder than it boils by no more than probes err",
    },
    ...{ check: "superheat", source: "dew point tables: R-448A boils at 12 F under 34.7 psig" },
    equipment: rack,
    says: (value) => [`${value} psi at the case and 12 F on the line`],
    steps: [
      [34, "bad superheat:none"],
      [39.5, "bad superheat:none"],
      [41.5, ""],
    ],
  },
  {
    ...{
      what: "F of a line beside 38 psi: over 60 it may hold hot gas",
      check: "superheat",
    },
    ...{ source: practice, equipment: { ...split, refrigerant: "R-448A" } },
    says: (value) => [`38 psi at the rack and ${value} F on the line`],
    steps: [
      [59.9, "bad superheat:high"],
      [60.3, ""],
    ],
  },
  {
    ...{ what: "microns ten minutes behind 350: at 500 it holds, over it no more" },
    ...{ check: "evacuation", source: "decay-test: at or below 500 micron; common practice" },
    equipment: split,
    says: (value) => ["valved off at 350", `10 min later ${value}`],
    steps: [
      [499, "good evacuation:tight"],
      [500, "good evacuation:tight"],
      [501, "unknown evacuation:rising"],
    ],
  },
  {
    ...{ what: "discharge line over 350 psi of R-410A, F: 10 F over saturation is wet" },
    ...{ check: "discharge_temperature", source: practice, equipment: split },
    says: (value) => [`suction 120 line 52, head 350 liquid 95, discharge line ${value} F`],
    steps: [
      [116, "watch discharge:wet"],
      [117, "good discharge:usual"],
    ],
  },
  {
    ...{ what: "seconds of the last reading beside a minute's: 25 to 35 is half of it" },
    ...{ check: "polarization", source: "ins-dar-def: 60 s over 30 s", equipment: motor },
    says: (value) => [`1 min 100 meg, ${value} sec 90 meg`],
    steps: [
      [24, ""],
      [26, "unknown"],
      [34, "unknown"],
      [36, ""],
    ],
  },
  {
    ...{ what: "kilohms of a coil's sensor, two others at 10: 0.3 apart", check: "sensor" },
    ...{ source: practice, equipment: drive },
    says: (value) => [`coil sensor ${value}k, the other two are both 10k`],
    steps: [
      [6.9, "bad sensor:off"],
      [7.1, "unknown, unknown"],
      [14.2, "unknown, unknown"],
      [14.4, "bad sensor:off"],
    ],
  },
  {
    ...{ what: "A at a start that held four seconds, 130 locked: from 0.75 locked" },
    ...{ check: "start_current", source: practice, equipment: motor },
    says: (value) => [`inrush ${value} A for 4 sec then the overload`],
    steps: [
      [97, "good start:line_start"],
      [98, "bad start:held_locked"],
    ],
  },
  {
    ...{ what: "lb in a bottle of 26.2 lb water, R-410A: 80 percent by volume", check: "charge" },
    ...{ source: "AHRI Guideline K; 49 CFR 173.304a (from memory)", equipment: bottle },
    says: (value) => [`recovery bottle WC 26.2, ${value} lb in it`],
    steps: [
      [22, "good"],
      [22.4, "bad"],
    ],
  },
];

climbSaid(edges);

describe("a box read half an hour off its suction at most (common practice)", () => {
  const cooler: EquipmentFacts = { ...rack, kind: "walk-in cooler", refrigerant: "R-404A" };
  const boils = { at: "suction", reference: "absolute" } as const;
  const pa = saturationPa("R-404A", "dew", cel(10)) ?? 0;
  const levels = (minutes: number) => {
    const box: CaseNote = { ...note("box", r("temperature", cel(38), { at: "box" })) };
    const suction: CaseNote = { ...note("suction", r("pressure", pa, boils)) };
    const at = (minute: number) => new Date(Date.UTC(2026, 4, 12, 10, minute)).toISOString();
    const notes = [
      { ...box, at: at(0) },
      { ...suction, at: at(minutes) },
    ];
    return judge(caseOf(cooler, notes))
      .findings.filter(({ check }) => check === "saturation")
      .map(({ says }) => says);
  };
  test.each([
    [29, true],
    [30, true],
    [31, false],
  ])("%s minutes", (minutes, held) => {
    expect(levels(minutes).some((says) => /under the box air/.test(says))).toBe(held);
  });
});

describe("the class of a gas decides how far a big circuit is recovered (40 CFR 82.152, 82.156)", () => {
  const levels = (refrigerant: string, inches: number) =>
    judgedNotes({ refrigerant, charge_kg: 113.4 }, [`recovered to ${inches} inches of vacuum`])
      .findings.filter(({ basis }) => basis === "40 CFR 82.156")
      .map(({ level }) => level);
  // 104 F: R-410A stands at 352 psia, R-32 at 359, R-134a at 147
  test.each([
    ["R-32", 0.1, ["good"]],
    ["R-410A", 0.1, ["watch"]],
    ["R-410A", 10, ["good"]],
    ["R-134a", 10, ["watch"]],
    ["R-134a", 15, ["good"]],
  ])("%s at %s inches", (refrigerant, inches, expected) => {
    expect(levels(refrigerant, inches)).toEqual(expected);
  });
});
