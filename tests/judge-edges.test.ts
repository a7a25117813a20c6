import { describe, expect, test } from "vitest";
import { tierSign } from "../src/judge/checks/insulation-tier.ts";
import { circuitScenes } from "../src/judge/circuit-scenes.ts";
import { digitPercentOf } from "../src/judge/digit.ts";
import { figuresOf } from "../src/judge/figures.ts";
import { judge } from "../src/judge/judge.ts";
import { newPart } from "../src/judge/new-in.ts";
import { sharedBy } from "../src/judge/places.ts";
import { sceneOf } from "../src/judge/scene.ts";
import { latestPair } from "../src/judge/together.ts";
import { isFittedUnproven } from "../src/judge/unproven.ts";
import type { EquipmentFacts } from "../src/model.ts";
import { amps, caseOf, did, note, r, volts } from "./case-builder.ts";
import { judgedNotes, split } from "./support/judged-notes.ts";

/** Small parts of the judge, each at the edge where it turns. */

const motor: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };
const judged = (equipment: EquipmentFacts, ...notes: readonly string[]) =>
  judgedNotes(equipment, notes);

test("the suction side boils, the head side condenses", () => {
  const { findings } = judged(split, "suction 128 psig 54 F, head 365 psig, liquid 101 F");
  const sides = findings.filter(({ check }) => check === "saturation");
  const at = (word: string) =>
    sides.find(({ says }) => says.startsWith(word))?.values.saturation_Cel;
  // tables of R-410A: 128 psig boils near 44 F, 365 psig condenses near 109 F
  expect(at("Boils at ")).toBeGreaterThan(5);
  expect(at("Boils at ")).toBeLessThan(9);
  expect(at("Condenses at ")).toBeGreaterThan(41);
  expect(at("Condenses at ")).toBeLessThan(45);
});

test("a lead of just 100 megohm is sound, one below is not; just 20 is low, below very low", () => {
  const leads = (ohm: number) => ({
    ...{ about: "compressor", lowestOhm: ohm, highestOhm: ohm, bound: false, count: 3 },
  });
  expect(tierSign(leads(100e6))).toBe("insulation:sound");
  expect(tierSign(leads(99.9e6))).toBe("insulation:low");
  expect(tierSign(leads(20e6))).toBe("insulation:low");
  expect(tierSign(leads(19.9e6))).toBe("insulation:very_low");
});

test("one of the last digits typed is worth its share of the figure, the coarsest counts", () => {
  const typed = (number: string) =>
    r("resistance", Number(number), { figure: { number, unit: "" } });
  expect(digitPercentOf([typed("84")])).toBeCloseTo(100 / 84, 9);
  expect(digitPercentOf([typed("0.6")])).toBeCloseTo(100 / 6, 9);
  expect(digitPercentOf([typed("0.61"), typed("0.6")])).toBeCloseTo(100 / 6, 9);
  expect(digitPercentOf([typed("0")])).toBe(100);
  expect(digitPercentOf([])).toBe(100);
});

test("figures are told in the units that most of the readings were said in", () => {
  const saidIn = (...units: readonly string[]) => {
    const readings = units.map((unit) => r("temperature", 20, { figure: { number: "20", unit } }));
    return figuresOf(sceneOf(caseOf({}, [note("", readings)])));
  };
  expect(saidIn("C", "F").volume(10)).toBe("353 cubic feet");
  const us = saidIn("F", "psig", "C");
  expect(us.volume(10)).toBe("353 cubic feet");
  expect(us.temperature(20)).toBe("68 F");
  expect(us.difference(5)).toBe("9 F");
  expect(us.gauge(689_476)).toBe("100 psi");
  expect(us.airflow(1)).toBe("2119 cfm");
  const si = saidIn("C", "bar", "F");
  expect(si.volume(10)).toBe("10 cubic metres");
  expect(si.temperature(20.04)).toBe("20 C");
  expect(si.gauge(689_476)).toMatch(/^6\.89?5? bar$/);
  expect(si.airflow(1)).toBe("3600 cubic metres an hour");
});

test("what is new is what is named, else what was called old", () => {
  const said = (text: string) => newPart([{ readings: [], statements: [], text }]);
  expect(said("old contactor was pitted, new one is in")).toBe("contactor");
  expect(said("new motor is in, the old contactor stays")).toBe("motor");
  expect(said("new one is in")).toBeUndefined();
  expect(said("old contactor is pitted")).toBeUndefined();
});

describe("two readings are taken together", () => {
  const suction = r("pressure", 8e5, { at: "suction" });
  const line = r("temperature", 12, { at: "suction" });
  const pairOf = (...notes: Parameters<typeof caseOf>[1]) => {
    const scene = sceneOf(caseOf(split, notes));
    const of = (quantity: string) => scene.readings.filter((one) => one.quantity === quantity);
    return latestPair(scene, of("pressure"), of("temperature"));
  };
  test("out of the latest note that has both", () => {
    const pair = pairOf(
      note("a", suction, line),
      note("b", r("pressure", 9e5), r("temperature", 14)),
    );
    expect(pair?.map(({ value }) => value)).toEqual([9e5, 14]);
  });
  test("out of two notes where each was read once and nothing was done between", () => {
    expect(pairOf(note("a", suction), note("b", line))?.map(({ value }) => value)).toEqual([
      8e5, 12,
    ]);
    expect(pairOf(note("a", suction), note("b", did("charged")), note("c", line))).toBeUndefined();
  });
  test("never out of two notes where one of them was read twice, or not at all", () => {
    const again = r("temperature", 13, { at: "liquid" });
    expect(pairOf(note("a", suction), note("b", line), note("c", again))).toBeUndefined();
    expect(pairOf(note("a", suction))).toBeUndefined();
  });
});

test("a part of the motor's circuit is unproven until amps are read after it", () => {
  const unproven = (...notes: Parameters<typeof caseOf>[1]) =>
    isFittedUnproven(sceneOf(caseOf(motor, notes)));
  const fitted = note("capacitor replaced", did("replaced", "capacitor"));
  expect(unproven(fitted, note("looks fine"))).toBe(true);
  expect(unproven(fitted, note("18 amps", amps([18])))).toBe(false);
  expect(unproven(note("18 amps", amps([18])))).toBe(false);
});

test("a unit with two circuits is seen from each one that was weighed", () => {
  const facts: EquipmentFacts = {
    ...split,
    charge_kg: 20,
    circuits: [
      { circuit: "1", charge_kg: 8 },
      { circuit: "2", charge_kg: 12 },
    ],
  };
  const weighed = (subject?: string) =>
    r("mass", 3, { action: "recovered", ...(subject === undefined ? {} : { subject }) });
  const scenes = (...subjects: (string | undefined)[]) =>
    circuitScenes(sceneOf(caseOf(facts, [note("", ...subjects.map(weighed))]))).map(
      ([about, scene]) => [about, scene.facts.charge_kg, scene.readings.length],
    );
  expect(scenes("circuit 1", "circuit 2")).toEqual([
    ["circuit 1", 8, 1],
    ["circuit 2", 12, 1],
  ]);
  expect(scenes("circuit 2")).toEqual([["circuit 2", 12, 1]]);
  // nobody said where the third went
  expect(scenes("circuit 1", "circuit 2", undefined)).toEqual([["system", 20, 3]]);
  expect(scenes(undefined)).toEqual([["system", 20, 1]]);
});

test("rooms that are out point to the deepest part over them all; others under it are unheard of", () => {
  const tree = [
    { tag: "BC-1" },
    { tag: "BR-1", parent: "BC-1", places: ["101", "102", "103"] },
    { tag: "BR-2", parent: "BC-1", places: ["104"] },
  ];
  const { explanations, unplaced, contradictions } = sharedBy(tree, ["101", "102", "999"], ["104"]);
  expect(explanations).toEqual([{ parts: ["BR-1"], unheard: ["103"] }]);
  expect(unplaced).toEqual(["999"]);
  expect(contradictions).toEqual([]);
  expect(sharedBy(tree, ["101"], ["101"]).contradictions).toEqual(["101"]);
});

describe("on a bus", () => {
  const inverter: EquipmentFacts = { ...motor, drive: "inverter" };
  const bus = note("bus 4 volts dc", r("voltage", 4, { kind: "dc", at: "dc_bus" }));
  const levelOf = (...notes: Parameters<typeof caseOf>[1]) =>
    judge(caseOf(inverter, notes)).findings.find(({ check }) => check === "dc_bus")?.level;
  test("hardly any volts are drained where the power was put off in an earlier note", () => {
    expect(levelOf(note("", did("locked")), bus)).toBe("good");
  });
  test("hardly any volts right before a dead test are drained, beside a line that is on they are a fault", () => {
    const diodes = note("", r("diode_drop", 0.41, { points: ["DC-", "U"] }));
    expect(levelOf(bus, diodes)).toBe("good");
    expect(levelOf(note("bus 4 volts dc", ...bus.readings, ...volts([460, 461])), diodes)).toBe(
      "bad",
    );
  });
  test("and a fault where it was put on again since", () => {
    expect(levelOf(note("", did("locked")), note("", did("power_on")), bus)).toBe("bad");
  });
});

test("a board's start-up record asks for less than a compressor's", () => {
  const missing = (what: string) =>
    judge(caseOf(motor, [note("", did("replaced", what))])).findings.find(
      ({ check }) => check === "commissioning",
    )?.missing ?? "";
  expect(missing("compressor")).toContain("weight charged");
  expect(missing("board")).toContain("supply volts");
  expect(missing("board")).not.toContain("weight charged");
});

test("a peak beyond the worst crest of the first half cycle is no crest value", () => {
  const says = (peakA: number): string =>
    judge(caseOf(motor, [note("", amps([peakA], { state: "start", stat: "peak" }))])).findings.find(
      ({ check }) => check === "start_current",
    )?.says ?? "";
  // 2 sqrt 2 of the locked-rotor current
  expect(says(300)).toContain("crest value");
  expect(says(1.06 * 2 * Math.SQRT2 * 130)).not.toContain("crest value");
});

describe("leads that still hang on something", () => {
  const signOf = (...notes: readonly string[]) =>
    judged(motor, ...notes).findings.flatMap(({ check, signs = [] }) =>
      check === "insulation" ? signs : [],
    );
  test.each([
    [
      "4 meg on all three to ground, still plugged into the drive board",
      "insulation:leads_disagree",
    ],
    ["megged through the contactor, 1.2 meg on all three", "insulation:leads_disagree"],
    ["leads not lifted yet, 4 meg on all three to ground", "insulation:leads_disagree"],
    [
      "0.2 meg on all three to ground, hooked up to the starter",
      "insulation:ground_fault_unproven",
    ],
  ])("%s: the measurement is in doubt", (text, sign) => {
    expect(signOf(text)).toEqual([sign]);
  });
  test("taken off, what they read is theirs", () => {
    expect(signOf("unplugged from the drive, megged 4 meg on all three")[0]).toBe(
      "insulation:very_low",
    );
    expect(signOf("leads off, 650 meg on all three to ground")).toEqual(["insulation:sound"]);
  });
  test("what is low with them and high without is the cable's", () => {
    const { findings } = judged(
      motor,
      "megged from the starter, 0.8 meg on all three",
      "lifted the leads at the compressor, 820 meg on all three",
    );
    expect(findings.map(({ about, check, level }) => [about, check, level])).toEqual([
      ["compressor", "insulation", "good"],
      ["cable", "supply", "bad"],
    ]);
  });
});

test("three volts in a row are a set, what stands apart before them is none of it", () => {
  const unbalance = (text: string) =>
    judged(motor, text).findings.flatMap(({ values }) => values.unbalance_percent ?? []);
  expect(unbalance("444 volts at rest, it goes to 392 390 391 when comp 2 joins")[0]).toBeLessThan(
    1,
  );
  expect(unbalance("480 at rest and under load 466 441 467")[0]).toBeGreaterThan(3);
});

test("a dead crankcase heater explains no call where nobody started anything", () => {
  const first = (text: string) => judged(motor, text).diagnosis[0]?.fault;
  const low = "31 meg on all three to ground";
  expect(first(`crankcase heater is dead. ${low}`)).toBe("compressor_insulation_degraded");
  expect(first(`crankcase heater is dead, comp rattled at the first start and tripped`)).toBe(
    "flooded_start",
  );
});

test("sides level before a start that only hums clear no rotor", () => {
  const first = (text: string) => judged(motor, text).diagnosis[0]?.fault;
  const level = "pressures equal at 148 both sides before start";
  expect(first(`${level}, hums and trips, 128 amps for five seconds`)).toBe(
    "compressor_rotor_locked",
  );
  const found = judged(motor, "gauges equal at 190, then it starts").findings.flatMap(
    ({ signs = [] }) => signs,
  );
  expect(found).toContain("equal_start:free");
});

test("an inducer's amps are none of the compressor's", () => {
  const checks = judged(motor, "inducer draws 1.4 amps").findings.map(({ check }) => check);
  expect(checks).not.toContain("running_current");
});
