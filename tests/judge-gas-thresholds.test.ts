import { describe, expect, test } from "vitest";
import { judge } from "../src/judge/judge.ts";
import type { CaseNote, EquipmentFacts, Reading } from "../src/model.ts";
import {
  celFromFahrenheit as cel,
  kelvinPerFahrenheit as F,
  pascalPerInchOfWater,
  pascalPerMicron,
} from "../src/physics/constants.ts";
import { saturationPa } from "../src/physics/saturation-pressure.ts";
import { saturationCel } from "../src/physics/saturation-temperature.ts";
import { vacuumDecay } from "../src/physics/vacuum-decay.ts";
import { caseOf, note, r } from "./case-builder.ts";
import { judgedNotes } from "./support/judged-notes.ts";
import { climb, type Stairs } from "./support/stairs.ts";

/** Where verdicts of the refrigerant and air side turn: each figure just before and just behind. */

const practice = "common practice";
const split: EquipmentFacts = {
  ...{ drive: "line", refrigerant: "R-410A", metering: "expansion_valve", mode: "cooling" },
};
const heating: EquipmentFacts = { ...split, mode: "heating" };
const variable: EquipmentFacts = {
  ...{ kind: "outdoor unit", drive: "inverter", operation: "test" },
  ...{ refrigerant: "R-410A", metering: "expansion_valve", mode: "cooling" },
};
const weighed: EquipmentFacts = { refrigerant: "R-410A", charge_kg: 10 };

const one = (...readings: readonly Reading[]): readonly CaseNote[] => [note("", ...readings)];
const absolute = (pa: number | undefined, at: "suction" | "discharge" | "liquid"): Reading =>
  r("pressure", pa ?? 0, { at, reference: "absolute" });
const boilsAt = (f: number): Reading => absolute(saturationPa("R-410A", "dew", cel(f)), "suction");
const condensesAt = (f: number): Reading =>
  absolute(saturationPa("R-410A", "bubble", cel(f)), "liquid");

const stairs: readonly Stairs[] = [
  {
    what: "outdoor subcooling in a settled test run, F",
    check: "charge",
    source: practice,
    equipment: variable,
    notes: (value) => one(r("subcooling", value * F), r("valve_opening", 50)),
    steps: [
      [3.9, "bad test_charge:short"],
      [4.1, "good test_charge:right"],
      [17.9, "good test_charge:right"],
      [18.1, "bad test_charge:over"],
    ],
  },
  {
    what: "discharge superheat in a settled test run, F",
    check: "charge",
    source: practice,
    equipment: variable,
    notes: (value) => one(r("superheat", value * F, { at: "discharge" }), r("valve_opening", 50)),
    steps: [
      [14.9, "bad test_charge:over"],
      [15.1, "good test_charge:right"],
      [69.9, "good test_charge:right"],
      [70.1, "bad test_charge:short"],
    ],
  },
  {
    what: "openings of the valves in a settled test run, percent",
    check: "charge",
    source: practice,
    equipment: variable,
    notes: (value) => one(r("subcooling", 10 * F), r("valve_opening", value)),
    steps: [
      [19.9, "bad test_charge:over"],
      [20.1, "good test_charge:right"],
      [84.9, "good test_charge:right"],
      [85.1, "bad test_charge:short"],
    ],
  },
  {
    what: "kilograms out of a plate charge of 10",
    check: "charge",
    source: practice,
    equipment: weighed,
    notes: (value) => one(r("mass", value, { action: "recovered" })),
    steps: [
      [8.79, "watch weighed:short"],
      [8.81, "good weighed:right"],
      [10.99, "good weighed:right"],
      [11.01, "watch weighed:over"],
    ],
  },
  {
    what: "kilograms back into a plate charge of 10 that came out whole",
    check: "charge",
    source: practice,
    equipment: weighed,
    notes: (value) => [
      note("", r("mass", 10, { action: "recovered" })),
      note("", r("mass", value, { action: "charged" })),
    ],
    steps: [
      [9.49, "watch, good weighed:right"],
      [9.51, "good, good weighed:right"],
      [10.49, "good, good weighed:right"],
      [10.51, "watch, good weighed:right"],
    ],
  },
  {
    what: "pressure at rest against the coil's 86 F, F of saturation over it",
    check: "saturation",
    source: "Li & Braun 2007; allowance of 3 F common practice",
    equipment: split,
    notes: (value) => [
      note(
        "off overnight",
        r("temperature", 30, { at: "outdoor_air" }),
        r("pressure", saturationPa("R-410A", "bubble", 30 + value * F) ?? 0, {
          reference: "absolute",
        }),
      ),
    ],
    steps: [
      [-3.4, "bad at_rest:below"],
      [-2.6, "good at_rest:matches"],
      [2.9, "good at_rest:matches"],
      [3.2, "bad at_rest:above"],
    ],
  },
  {
    what: "a suction line colder than it boils, F",
    check: "superheat",
    source: "physics; allowance of 5 F for probe and gauge common practice",
    equipment: split,
    notes: (value) => one(boilsAt(40), r("temperature", cel(40 - value), { at: "suction" })),
    steps: [
      [4.9, "bad superheat:none"],
      [5.2, ""],
    ],
  },
  {
    what: "a liquid line warmer than it condenses, F",
    check: "subcooling",
    source: "physics; allowance of 5 F for probe and gauge common practice",
    equipment: split,
    notes: (value) => one(condensesAt(105), r("temperature", cel(105 + value), { at: "liquid" })),
    steps: [
      [4.9, "bad subcooling:none"],
      [5.2, ""],
    ],
  },
  {
    what: "a suction that boils warmer than any air that is cooled, F",
    check: "superheat",
    source: practice,
    equipment: split,
    notes: (value) => one(boilsAt(value), r("temperature", cel(value + 12), { at: "suction" })),
    steps: [
      [99.8, "good superheat:usual"],
      [100.3, ""],
    ],
  },
  {
    what: "discharge superheat of a machine of one speed, F",
    check: "discharge_temperature",
    source: practice,
    equipment: split,
    notes: (value) =>
      one(
        absolute(saturationPa("R-410A", "dew", cel(105)), "discharge"),
        r("temperature", cel(105 + value), { at: "discharge" }),
      ),
    steps: [
      [9.9, "watch discharge:wet"],
      [10.1, "good discharge:usual"],
    ],
  },
  {
    what: "static where the plate is silent, inches",
    check: "airflow",
    source: practice,
    equipment: split,
    notes: (value) => one(r("static_pressure", value * pascalPerInchOfWater)),
    steps: [
      [0.899, "good static:usual"],
      [0.901, "bad static:high"],
    ],
  },
  {
    what: "static against a rating of 0.5, inches",
    check: "airflow",
    source: practice,
    equipment: split,
    notes: (value) =>
      one(
        r("static_pressure", value * pascalPerInchOfWater),
        r("static_pressure", 0.5 * pascalPerInchOfWater, { rating: "nominal" }),
      ),
    steps: [
      [0.649, "good static:usual"],
      [0.651, "bad static:high"],
    ],
  },
  {
    what: "a split of 10 F from air of so many F",
    check: "temperature_split",
    source: "targets are made for air of 70 to 84 F; 64 F common practice",
    equipment: split,
    notes: (value) =>
      one(
        r("temperature", cel(value), { at: "return_air" }),
        r("temperature", cel(value - 10), { at: "supply_air" }),
      ),
    steps: [
      [63.9, "unknown"],
      [64.1, "watch split:low"],
    ],
  },
  {
    what: "30 F of superheat by pressure and line, and so many said with it",
    check: "superheat",
    source: practice,
    equipment: split,
    notes: (value) =>
      one(boilsAt(40), r("temperature", cel(70), { at: "suction" }), r("superheat", value * F)),
    steps: [
      [21.8, "unknown"],
      [22.2, "bad superheat:high"],
    ],
  },
  {
    what: "22 F of subcooling by pressure and line, and so many said with it",
    check: "subcooling",
    source: practice,
    equipment: split,
    notes: (value) =>
      one(
        condensesAt(110),
        r("temperature", cel(88), { at: "liquid" }),
        r("subcooling", value * F),
      ),
    steps: [
      [15.8, "unknown"],
      [16.2, "bad subcooling:high"],
    ],
  },
  {
    what: "the ratio in heating",
    check: "compression",
    source: "4 to 7 at low outdoor temperatures: common practice",
    equipment: heating,
    notes: (value) => one(absolute(4e5, "suction"), absolute(4e5 * value, "discharge")),
    steps: [
      [6.9, "good ratio:usual"],
      [7.1, "watch ratio:high"],
    ],
  },
  {
    what: "boiling under an outdoor air of 40 F in heating, F",
    check: "saturation",
    source: practice,
    equipment: heating,
    notes: (value) => one(r("temperature", cel(40), { at: "outdoor_air" }), boilsAt(40 - value)),
    steps: [
      [3.8, "watch suction:high"],
      [4.2, "good suction:usual"],
      [29.8, "good suction:usual"],
      [30.2, "watch suction:low"],
    ],
  },
  {
    what: "boiling under a box of 38 F",
    check: "saturation",
    source: practice,
    equipment: { ...split, kind: "walk-in cooler" },
    notes: (value) => one(r("temperature", cel(38), { at: "box" }), boilsAt(38 - value)),
    steps: [
      [6.3, "watch suction:high"],
      [6.7, "good suction:usual"],
      [19.8, "good suction:usual"],
      [20.2, "watch suction:low"],
    ],
  },
  {
    what: "condensing over a return air of 70 F in heating, F",
    check: "saturation",
    source: practice,
    equipment: heating,
    notes: (value) => one(r("temperature", cel(70), { at: "return_air" }), condensesAt(70 + value)),
    steps: [
      [13.7, "watch head:low"],
      [14.2, "good head:usual"],
      [54.7, "good head:usual"],
      [55.2, "watch head:high"],
    ],
  },
  {
    what: "boiling under a leaving water of 44 F, F",
    check: "saturation",
    source: practice,
    equipment: { ...split, kind: "chiller" },
    notes: (value) => one(r("temperature", cel(44), { at: "water_out" }), boilsAt(44 - value)),
    steps: [
      [0.95, "watch suction:high"],
      [1.05, "good suction:usual"],
      [13.8, "good suction:usual"],
      [14.2, "watch suction:low"],
    ],
  },
  {
    what: "the ratio of a walk-in cooler",
    check: "compression",
    source: practice,
    equipment: { ...split, kind: "walk-in cooler" },
    notes: (value) => one(absolute(2e5, "suction"), absolute(2e5 * value, "discharge")),
    steps: [
      [2.39, "watch ratio:low"],
      [2.41, "good ratio:usual"],
      [8.9, "good ratio:usual"],
      [9.1, "watch ratio:high"],
    ],
  },
  {
    what: "the ratio of a walk-in freezer",
    check: "compression",
    source: practice,
    equipment: { ...split, kind: "walk-in freezer" },
    notes: (value) => one(absolute(1.5e5, "suction"), absolute(1.5e5 * value, "discharge")),
    steps: [
      [3.4, "watch ratio:low"],
      [3.6, "good ratio:usual"],
      [15.9, "good ratio:usual"],
      [16.1, "watch ratio:high"],
    ],
  },
  {
    what: "where a walk-in freezer boils with no box read, F",
    check: "saturation",
    source: practice,
    equipment: { ...split, kind: "walk-in freezer" },
    notes: (value) => one(boilsAt(value)),
    steps: [
      [-40.6, "watch suction:low"],
      [-39.4, "good suction:usual"],
      [-0.6, "good suction:usual"],
      [0.6, "watch suction:high"],
    ],
  },
  {
    what: "where a walk-in freezer condenses with no weather read, F",
    check: "saturation",
    source: practice,
    equipment: { ...split, kind: "walk-in freezer" },
    notes: (value) => one(condensesAt(value)),
    steps: [
      [67.4, "watch head:low"],
      [68.6, "good head:usual"],
      [128.4, "good head:usual"],
      [129.6, "watch head:high"],
    ],
  },
  {
    what: "where a walk-in cooler condenses with no weather read, F",
    check: "saturation",
    source: practice,
    equipment: { ...split, kind: "walk-in cooler" },
    notes: (value) => one(condensesAt(value)),
    steps: [
      [67.4, "watch head:low"],
      [68.6, "good head:usual"],
      [128.4, "good head:usual"],
      [129.6, "watch head:high"],
    ],
  },
  {
    what: "the ratio of a machine of many zones",
    check: "compression",
    source: practice,
    equipment: { ...split, kind: "outdoor unit", drive: "inverter" },
    notes: (value) => one(absolute(3e5, "suction"), absolute(3e5 * value, "discharge")),
    steps: [
      [1.29, "watch"],
      [1.31, "good"],
      [7.92, "good"],
      [8.08, "watch"],
    ],
  },
  {
    what: "the ratio of a chiller",
    check: "compression",
    source: practice,
    equipment: { ...split, kind: "chiller" },
    notes: (value) => one(absolute(3e5, "suction"), absolute(3e5 * value, "discharge")),
    steps: [
      [1.58, "watch ratio:low"],
      [1.62, "good ratio:usual"],
      [4.95, "good ratio:usual"],
      [5.05, "watch ratio:high"],
    ],
  },
  {
    what: "a discharge behind the liquid's pressure, as its share: far below it is no pressure",
    check: "compression",
    source: practice,
    equipment: split,
    notes: (value) =>
      one(absolute(5e5, "suction"), absolute(26e5, "liquid"), absolute(26e5 * value, "discharge")),
    steps: [
      [0.79, "watch ratio:high"],
      [0.81, "good ratio:usual"],
    ],
  },
  {
    what: "lines of exchanged probes: the liquid line over a boiling point of 40 F, F",
    check: "saturation",
    source: practice,
    equipment: split,
    notes: (value) =>
      one(
        boilsAt(40),
        condensesAt(130),
        r("temperature", cel(120), { at: "suction" }),
        r("temperature", cel(40 + value), { at: "liquid" }),
      ),
    steps: [
      [35.8, "unknown physics:contradicts"],
      [36.2, "good suction:usual, watch head:high"],
    ],
  },
  {
    what: "head that moved since the liquid line was read beside it, as a share",
    check: "subcooling",
    source: practice,
    equipment: split,
    notes: (value) => {
      const pa = saturationPa("R-410A", "bubble", cel(105)) ?? 0;
      const line = r("temperature", cel(95), { at: "liquid" });
      return [
        note("", absolute(pa, "discharge"), line),
        note("", absolute(pa / (1 - value), "discharge")),
      ];
    },
    steps: [
      [0.039, "good subcooling:usual"],
      [0.041, ""],
    ],
  },
  {
    what: "a discharge line as a board may believe it, C",
    check: "discharge_temperature",
    source: practice,
    equipment: { drive: "line" },
    notes: (value) => one(r("temperature", value, { at: "discharge" })),
    steps: [
      [-0.1, "unknown sensor:off"],
      [0.1, "good discharge:usual"],
    ],
  },
  {
    what: "suction over head",
    check: "compression",
    source: "physics; 2 percent for two gauges common practice",
    equipment: { drive: "line" },
    notes: (value) => one(absolute(1e6 * value, "suction"), absolute(1e6, "discharge")),
    steps: [
      [0.99, "watch ratio:flat"],
      [1.03, ""],
    ],
  },
  {
    what: "lines of exchanged probes: the suction line under a bubble point of 105 F, F",
    check: "saturation",
    source: practice,
    equipment: split,
    notes: (value) =>
      one(
        boilsAt(40),
        condensesAt(105),
        r("temperature", cel(105 - value), { at: "suction" }),
        r("temperature", cel(52), { at: "liquid" }),
      ),
    steps: [
      [26.8, "unknown physics:contradicts"],
      [27.3, "good suction:usual, good head:usual"],
    ],
  },
  {
    what: "a superheat said with 407C, K off what the bubble column gives",
    check: "saturation",
    source: "definition: superheat goes by dew; 1.2 K common practice",
    equipment: { ...split, refrigerant: "R-407C" },
    notes: (value) => {
      const pa = saturationPa("R-407C", "dew", cel(40)) ?? 0;
      const byBubbleK = cel(52) - (saturationCel("R-407C", "bubble", pa) ?? 0);
      return one(
        absolute(pa, "suction"),
        r("temperature", cel(52), { at: "suction" }),
        r("superheat", byBubbleK + value),
      );
    },
    steps: [
      [-1.1, "good suction:usual, watch column:wrong"],
      [1.1, "good suction:usual, watch column:wrong"],
      [1.3, "good suction:usual"],
    ],
  },
  {
    what: "a vacuum that a pump has hardly begun, Pa",
    check: "evacuation",
    source: practice,
    equipment: split,
    notes: (value) => one(r("vacuum", value)),
    steps: [
      [13_331, "unknown"],
      [13_333, ""],
    ],
  },
];

climb(stairs);

/** Figures whose words place them. */
const worded: readonly {
  readonly what: string;
  readonly check: string;
  readonly equipment: EquipmentFacts;
  readonly notes: (value: string) => readonly string[];
  readonly steps: readonly (readonly [string, string])[];
}[] = [
  {
    what: "a drop over the drier, more than 2 to 3 F common practice",
    check: "valve",
    equipment: split,
    notes: (value) => [`liquid line 90 F before the drier and ${value} F after the drier`],
    steps: [
      ["87.1", "good line_drop:none"],
      ["86.9", "bad line_drop:drop"],
    ],
  },
  {
    what: "warming in the reversing valve, 2 to 5 F common practice",
    check: "valve",
    equipment: { ...split, kind: "heat pump" },
    notes: (value) => [`reversing valve: suction pipe 50 F going in and ${value} F coming out`],
    steps: [
      ["54.9", "good reversing:none"],
      ["55.1", "bad reversing:picks_up"],
    ],
  },
  {
    what: "minutes that a test run has lasted, 15 common practice",
    check: "charge",
    equipment: variable,
    notes: (value) => [`test run, ${value} minutes in, subcooling 1 F, valves 95 percent open`],
    steps: [
      ["14", "unknown"],
      ["15", "bad test_charge:short"],
    ],
  },
  {
    what: "a hold that is no trickle, psig, 4 bar common practice",
    check: "pressure_test",
    equipment: split,
    notes: (value) => [
      `nitrogen ${value} psig with pipes at 70 F, next day ${value} psig with pipes at 70 F`,
    ],
    steps: [
      ["43", ""],
      ["44", "good hold:holds"],
    ],
  },
  {
    what: "days since an addition that still counts, 365 by 40 CFR 84.102",
    check: "leak_rate",
    equipment: {
      refrigerant: "R-404A",
      charge_kg: 100,
      leak_regime: "us_84",
      leak_method: "rolling",
    },
    notes: (value) => [`added 6 kg today, and 6 kg ${value} days ago`],
    steps: [
      ["365", "bad leak_rate:over added:again"],
      ["366", "good leak_rate:under added:again"],
    ],
  },
  {
    what: "one zone's pipe against the others' 50 F, 18 F common practice",
    check: "valve",
    equipment: variable,
    notes: (value) => [`zone 3 valve commanded 400 steps, its pipe ${value} F, the others 50 F`],
    steps: [
      ["67.5", ""],
      ["68.5", "bad branch:stuck"],
    ],
  },
  {
    what: "a zone's pipe out against 72 F in, told open: 3 F common practice",
    check: "valve",
    equipment: variable,
    notes: (value) => [`zone 3 eev at 400 steps, pipe in 72 out ${value}`],
    steps: [
      ["75", "bad valve_answer:stays_shut"],
      ["76", ""],
    ],
  },
  {
    what: "steps of a zone's valve whose pipes are alike: up to 100 is shut, common practice",
    check: "valve",
    equipment: variable,
    notes: (value) => [`zone 3 eev at ${value} steps, pipe in 72 out 72`],
    steps: [
      ["98", ""],
      ["102", "bad valve_answer:stays_shut"],
    ],
  },
  {
    what: "a zone's pipes alike, F: colder than 64 or warmer than 88 it works, common practice",
    check: "valve",
    equipment: variable,
    notes: (value) => [`zone 3 eev at 400 steps, pipe in ${value} out ${value}`],
    steps: [
      ["63", ""],
      ["65", "bad valve_answer:stays_shut"],
      ["87", "bad valve_answer:stays_shut"],
      ["89", ""],
    ],
  },
];

describe.each(worded)("$what", ({ check, equipment, notes, steps }) => {
  test.each(steps)("at %s: %s", (value, verdict) => {
    const found = judgedNotes(equipment, notes(value)).findings.filter(
      (one) => one.check === check,
    );
    expect(found.map(({ level, signs = [] }) => [level, ...signs].join(" ")).join(", ")).toBe(
      verdict,
    );
  });
});

/** Source: p = p0 + k t for a leak, a slope that falls for moisture (physics); limits common practice. */
describe("a standing vacuum at its limits", () => {
  const shape = (...points: readonly (readonly [seconds: number, micron: number])[]) =>
    vacuumDecay(
      points.map(([afterS, micron]) => ({ afterS, absolutePa: micron * pascalPerMicron })),
    )?.shape;

  test.each([
    ["begins at 1000 micron", [0, 1000], [300, 1200], [600, 1210], "wet"],
    ["begins above 1000 micron", [0, 1001], [300, 1200], [600, 1210], "short"],
    ["rests just under 1000 micron", [0, 300], [300, 998], [600, 998], "above_hold"],
    ["rests just above 1000 micron", [0, 300], [300, 1002], [600, 1002], "wet"],
    ["rests at twice the pressure of melting ice", [0, 600], [300, 9199], [600, 9199], "wet"],
    ["rests above it", [0, 600], [300, 9202], [600, 9202], "leak"],
    ["ends with 0.44 of its first slope", [0, 300], [300, 1300], [600, 1740], "wet"],
    ["ends with 0.46 of its first slope", [0, 300], [300, 1300], [600, 1760], "leak"],
    ["was watched for 299 s", [0, 300], [150, 310], [299, 320], "short"],
    ["was watched for 300 s", [0, 300], [150, 310], [300, 320], "tight"],
  ] as const)("%s: %s %s %s is %s", (_what, first, second, third, verdict) => {
    expect(shape(first, second, third)).toBe(verdict);
  });
});

/** Source: ASHRAE 15-2022, 6.6 lb of A1 in one circuit; limits ASHRAE 34-2022. */
test.each([
  [3, "good"],
  [3.01, "bad"],
])("%s kg of R-410A in a room that holds it over its limit: %s", (kg, level) => {
  const { findings } = judge({
    ...caseOf({ refrigerant: "R-410A", charge_kg: kg }, one()),
    site: { smallest_room_m3: 5, rules: "ashrae" },
  });
  expect(findings.find(({ check }) => check === "room_concentration")?.level).toBe(level);
});

/** Source: 40 CFR 82.157(j), 84.106(j): 125 percent within a calendar year is reported by March 1. */
test.each([
  [124, false],
  [125, true],
])("%s percent of the charge added within a year is told as reported: %s", (kg, told) => {
  const { findings } = judge({
    ...caseOf(
      { refrigerant: "R-404A", charge_kg: 100, leak_regime: "us_84", leak_method: "rolling" },
      [note(`added ${kg} kg`, r("mass", kg, { action: "charged" }))],
    ),
    at: "2026-05-12T09:00:00Z",
  });
  const says = findings.find(({ check }) => check === "leak_rate")?.says ?? "";
  expect(/first of March/.test(says)).toBe(told);
});

/** Source: 5 F of superheat is more than weather and probes, 15 F apart is other weather; common practice, no source. */
test.each([
  [14.9, 80, false],
  [15.1, 80, true],
  [20, 94.9, true],
  [20, 95.1, false],
])(
  "superheat was 10 F at 80 F outside, now %s F at %s F: told as a change: %s",
  (now, outdoor, told) => {
    const visit = (superheat: number, outside: number) =>
      one(
        r("superheat", superheat * F),
        boilsAt(40),
        r("temperature", cel(outside), { at: "outdoor_air" }),
      );
    const { findings } = judge(caseOf(split, visit(now, outdoor), [{ notes: visit(10, 80) }]));
    expect(findings.some(({ check }) => check === "history")).toBe(told);
  },
);
