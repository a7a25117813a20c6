import { describe, expect, test } from "vitest";
import { circuitsOf } from "../src/judge/circuit.ts";
import { diagnose } from "../src/judge/diagnose.ts";
import { daysAgo, daysSinceAddition, sumsOf, weightsOf } from "../src/judge/masses.ts";
import { isMended } from "../src/judge/mended.ts";
import { underOwnLimits } from "../src/judge/own-limits.ts";
import { knownPart } from "../src/judge/part-name.ts";
import { bySubject, isBound, numberOf, setsOf, unrepeated } from "../src/judge/pick.ts";
import { saidDateMs } from "../src/judge/said-date.ts";
import { sceneOf } from "../src/judge/scene.ts";
import { stagesOf } from "../src/judge/stages.ts";
import { standingNotes } from "../src/judge/stand.ts";
import { whereIn } from "../src/judge/where.ts";
import { gist, listed, ohmWords, percentWords, plain } from "../src/judge/words.ts";
import type { CaseNote, EquipmentFacts, Finding, Limits, Reading } from "../src/model.ts";
import { caseOf, did, megs, note, pairs, r } from "./case-builder.ts";

/** What the judge's checks share: picking readings, putting them together, cutting a job in stages. */

const line: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };
const sceneFor = (facts: EquipmentFacts, ...notes: readonly CaseNote[]) =>
  sceneOf(caseOf(facts, notes));

describe("readings are told apart by what they belong to", () => {
  const groups = (...all: readonly Reading[]) =>
    bySubject(all, "compressor").map(([about, some]) => [about, some.length]);
  const amps = (subject?: string) => r("current", 12, subject === undefined ? {} : { subject });
  test("the nameless to the only one that is named, else to the kind", () => {
    expect(groups(amps(), amps())).toEqual([["compressor", 2]]);
    expect(groups(amps("compressor 2"), amps())).toEqual([["compressor 2", 2]]);
    expect(groups(amps("compressor 1"), amps("compressor 2"), amps())).toEqual([
      ...[
        ["compressor 1", 1],
        ["compressor 2", 1],
        ["compressor", 1],
      ],
    ]);
    expect(groups(amps("fan 1"), amps())).toEqual([
      ...[
        ["fan 1", 1],
        ["compressor", 1],
      ],
    ]);
  });
  test("a whole nameless set beside less than a set of a name is another's", () => {
    const [three, two] = [
      [amps(), amps(), amps()],
      [amps(), amps()],
    ];
    const named = (count: number) => Array.from({ length: count }, () => amps("compressor B"));
    expect(groups(...three, ...named(1))).toEqual([
      ...[
        ["compressor", 3],
        ["compressor B", 1],
      ],
    ]);
    expect(groups(...three, ...named(3))).toEqual([["compressor B", 6]]);
    expect(groups(...two, ...named(1))).toEqual([["compressor B", 3]]);
  });
});

describe("readings of one thing are taken together", () => {
  const sets = (...notes: readonly (readonly Reading[])[]) =>
    setsOf(
      notes.map((readings) => ({ readings })),
      notes.flat(),
    ).map((set) => set.map(({ value }) => value));
  const at = (ohm: number, ...points: readonly string[]) =>
    r("winding_resistance", ohm, { points: [...points] });
  test("three of one note, a new set where a point comes again", () => {
    expect(sets(pairs([1, 2, 3]))).toEqual([[1, 2, 3]]);
    expect(sets([...pairs([1, 2, 3]), ...pairs([4, 5, 6])])).toEqual([
      [1, 2, 3],
      [4, 5, 6],
    ]);
    expect(sets([at(1, "T1", "T2"), at(2, "T2", "T1")])).toEqual([[1], [2]]);
  });
  test("halves of several notes where their points differ, and only up to a set", () => {
    const [one, two, three] = pairs([1, 2, 3]);
    if (one === undefined || two === undefined || three === undefined) throw new Error("none");
    expect(sets([one], [two, three])).toEqual([[1, 2, 3]]);
    expect(sets([one, two], [at(9, "T1", "T2")])).toEqual([[1, 2], [9]]);
    expect(sets([one], [two], [three], [at(4, "T3", "T4")])).toEqual([[1], [2], [3], [4]]);
    // without points nobody knows whether it is the same one
    expect(sets([r("current", 5)], [r("current", 6)])).toEqual([[5], [6]]);
  });
  test("a corrected figure said alone goes back in the row with the gap", () => {
    const [one, two, three] = pairs([1, 2, 3]);
    if (one === undefined || two === undefined || three === undefined) throw new Error("none");
    expect(sets([one, two], [{ ...three, corrects: true }])).toEqual([[1, 2, 3]]);
    expect(sets([one, two], [{ ...at(9, "T2", "T1"), corrects: true }])).toEqual([[1, 2], [9]]);
  });
  test("and only those that were asked for", () => {
    expect(sets()).toEqual([]);
    const [one, two, three] = pairs([1, 2, 3]);
    if (one === undefined || two === undefined || three === undefined) throw new Error("none");
    expect(setsOf([{ readings: [one, two, three] }], [one, three])).toEqual([[one, three]]);
  });
});

test("a number is a number; a bound is what is over range or said as more than", () => {
  expect(numberOf(r("current", 12))).toBe(12);
  expect(numberOf(r("current", "OL"))).toBeUndefined();
  expect(numberOf({ ...r("current", 1), value: Number.NaN })).toBeUndefined();
  expect(numberOf({ ...r("fault_code", 1), value: "E4" })).toBeUndefined();
  expect(isBound(r("current", "OL"))).toBe(true);
  for (const [relation, bound] of [
    ...([
      [">", true],
      [">=", true],
      ["=", false],
      ["<", false],
      ["~", false],
    ] as const),
  ])
    expect([relation, isBound(r("current", 1, { relation }))]).toEqual([relation, bound]);
  const said = (about: string, says: string) => ({ about, says });
  expect(unrepeated([said("a", "x"), said("b", "x"), said("a", "x"), said("a", "y")])).toEqual([
    ...[said("a", "x"), said("b", "x"), said("a", "y")],
  ]);
});

test("figures are said in three digits, in the unit that fits, in plain letters", () => {
  for (const [value, words] of [
    ...([
      [0, "0"],
      [0.04149, "0.0415"],
      [84, "84"],
      [1.2, "1.2"],
      [999.6, "1000"],
    ] as const),
    ...([
      [1180.4, "1180"],
      [-3.456, "-3.46"],
      [123456, "123456"],
    ] as const),
  ])
    expect(plain(value)).toBe(words);
  for (const [ohm, words] of [
    ...([
      [999, "999 ohm"],
      [1e3, "1 kilohm"],
      [99_900, "99.9 kilohm"],
    ] as const),
    ...([
      [1e5, "0.1 megohm"],
      [999e6, "999 megohm"],
      [1e9, "1 gigohm"],
    ] as const),
  ])
    expect(ohmWords(ohm)).toBe(words);
  expect(listed([12.1, 12.4, 12], "A")).toBe("12.1, 12.4 and 12 A");
  expect(listed([12], "A")).toBe("12 A");
  expect(listed([], "A")).toBe("");
  expect(percentWords(1.26, 0.1)).toBe("1.3");
  expect(percentWords(1.26, 1)).toBe("1");
  expect(percentWords(18.4, 20)).toBe("18");
  expect(percentWords(1.2345, 0)).toBe("1.23");
  expect(gist("even: all of them")).toBe("even");
  expect(gist("one two three four five six seven eight nine ten")).toContain("ten");
  expect(gist("one two three four five six, seven eight nine ten eleven")).toBe(
    "one two three four five six",
  );
});

test("a date in words is that day, without a year the latest before now", () => {
  const now = Date.parse("2026-05-12T09:00:00Z");
  const day = (words: string) => {
    const ms = saidDateMs(words, now);
    return ms === undefined ? undefined : new Date(ms).toISOString().slice(0, 10);
  };
  for (const [words, date] of [
    ["topped up on March 14", "2026-03-14"],
    ["14th of march", "2026-03-14"],
    ["June 3", "2025-06-03"],
    ["12 May", "2026-05-12"],
    ["13 may", "2025-05-13"],
    ["3 sept 2023", "2023-09-03"],
    ["Sep. 3, 2023", "2023-09-03"],
    ["on 2024-02-29", "2024-02-29"],
    ["march on", undefined],
    ["nothing", undefined],
  ] as const)
    expect([words, day(words)]).toEqual([words, date]);
});

describe("weights of refrigerant", () => {
  const now = "2026-05-12T09:00:00Z";
  const weighed = (text: string, ...masses: readonly Reading[]) => ({
    ...note(text, masses),
    at: now,
  });
  const mass = (kg: number, more: Partial<Reading> = {}) =>
    r("mass", kg, { said: `${kg} kg`, action: "charged", ...more });
  const scene = (...notes: readonly CaseNote[]) => sceneFor({ charge_kg: 20 }, ...notes);
  test("are of today but where their own words date them", () => {
    const ages = (text: string, ...masses: readonly Reading[]) =>
      weightsOf(scene(weighed(text, ...masses))).map((one) => one.daysAgo ?? one.withinYear);
    expect(ages("added 3 kg", mass(3))).toEqual([0]);
    expect(ages("added 3 kg 2 weeks ago", mass(3))).toEqual([14]);
    expect(ages("added 3 kg on march 4", mass(3))).toEqual([true]);
    expect(ages("added 3 kg today and 2 kg a month ago", mass(3), mass(2))).toEqual([0, 30]);
    expect(ages("added 3 kg, last time was 150 days ago", mass(3))).toEqual([0]);
    // of an earlier visit, nobody knows which
    expect(ages("added 3 kg", mass(3, { earlier: true }))).toEqual([undefined]);
  });
  test("in and out are summed apart, of today alone, and none of a plate", () => {
    const sums = sumsOf(
      scene(
        weighed("recovered 4 kg", mass(4, { action: "recovered" })),
        weighed("added 3 kg", mass(3)),
        weighed("added 2 kg 90 days ago", mass(2)),
        weighed("plate 20 kg", mass(20, { rating: "nameplate_charge" })),
      ),
    );
    expect(sums).toEqual({ inKg: 3, outKg: 4 });
  });
  test("tell how long ago the last addition was, in words, by a date or by an earlier weight", () => {
    const since = (facts: EquipmentFacts, ...notes: readonly CaseNote[]) =>
      daysSinceAddition(sceneOf({ ...caseOf(facts, notes), at: now }));
    expect(since({}, weighed("added 3 kg, 140 days since the last charge", mass(3)))).toBe(140);
    expect(since({}, weighed("last top up was 2 months back, added 3 kg", mass(3)))).toBe(60);
    expect(since({}, weighed("added 3 kg, last one on march 13", mass(3)))).toBe(60);
    expect(since({}, weighed("added 3 kg and 2 kg 90 days ago", mass(3), mass(2)))).toBe(90);
    expect(since({ last_addition: "2026-05-02" }, weighed("added 3 kg", mass(3)))).toBe(10);
    expect(since({ last_addition: "2026-06-02" }, weighed("added 3 kg", mass(3)))).toBeUndefined();
    expect(since({}, weighed("added 3 kg", mass(3)))).toBeUndefined();
  });
  test("are so many days back as the words count", () => {
    for (const [words, days] of [
      ...([
        ["402 days back", 402],
        ["a week ago", 7],
        ["two months ago", 60],
      ] as const),
      ...([
        ["1 year before", 365],
        ["ago", undefined],
        ["2 kg ago", undefined],
      ] as const),
    ])
      expect([words, daysAgo(words)]).toEqual([words, days]);
  });
});

describe("a job is cut where the machine was first changed", () => {
  const read = note("suction 60", r("pressure", 4e5, { at: "suction", said: "suction 60" }));
  const later = note("suction 118", r("pressure", 8e5, { at: "suction", said: "suction 118" }));
  const stages = (...notes: readonly CaseNote[]) => {
    const { before, after } = stagesOf(notes);
    return [before, after].map((some) =>
      some.flatMap(({ readings }) => readings.map((one) => one.said)),
    );
  };
  test.each([
    "replaced",
    "repaired",
    "brazed",
    "tightened",
    "adjusted",
    "charged",
    "recovered",
    "circuit_opened",
    "nitrogen_in",
  ] as const)("by what was %s", (action) => {
    expect(stages(read, note("", did(action)), later)).toEqual([["suction 60"], ["suction 118"]]);
  });
  test("not by what was planned, looked at, put a fuse in, or wiped for a test", () => {
    const whole = [["suction 60", "suction 118"], []];
    expect(stages(read, later)).toEqual(whole);
    const planned = { ...did("replaced", "contactor"), planned: true as const };
    expect(stages(read, note("", planned), later)).toEqual(whole);
    expect(stages(read, note("", did("replaced", "fuses")), later)).toEqual(whole);
    expect(stages(read, note("", did("cleaned", "terminals")), later)).toEqual(whole);
    expect(stages(read, note("", did("swapped", "leads")), later)).toEqual(whole);
    expect(stages(read, note("", did("cleaned", "coil")), later)).toEqual([
      ...[["suction 60"], ["suction 118"]],
    ]);
    const said = { said: "replaced it", spans: [], rule: "" } as const;
    const deed = { kind: "action" as const, action: "replaced" as const, ...said };
    expect(stages(read, note("someone replaced it", deed), later)).toEqual(whole);
    expect(stages(read, note("L3 fuse blew, replaced it", deed), later)).toEqual(whole);
    expect(stages(read, note("contactor, replaced it", deed), later)[1]).toEqual(["suction 118"]);
  });
  test("a figure that went from one to another across the deed stood at the first before it", () => {
    const went = r("pressure", 8e5, { at: "suction", said: "now 118", series: [4e5, 8e5] });
    const { before } = stagesOf([note("", did("charged")), note("now 118", went)]);
    expect(before.flatMap(({ readings }) => readings.map(({ value }) => value))).toEqual([4e5]);
    for (const other of [
      ...[
        { ...went, after_s: 60 },
        { ...went, state: "start" as const },
      ],
      { ...went, quantity: "current" as const },
    ]) {
      const cut = stagesOf([note("", did("charged")), note("now 118", other)]);
      expect(cut.before.flatMap(({ readings }) => readings)).toEqual([]);
    }
  });
  test("what was read before stands until it is read again or its part is new", () => {
    const standing = (...notes: readonly CaseNote[]) =>
      standingNotes(stagesOf(notes)).flatMap(({ readings }) =>
        readings.map(({ quantity, value }) => `${quantity} ${value}`),
      );
    const leads = note("", megs([1e6, 1e6, 1e6]).slice(0, 1));
    const deed = note("", did("replaced", "compressor"));
    expect(standing(leads, note("", did("charged")))).toEqual(["insulation_resistance 1000000"]);
    expect(standing(leads, deed)).toEqual([]);
    expect(standing(read, deed, later)).toEqual(["pressure 800000"]);
    expect(standing(read, deed, note("", r("pressure", 2e6, { at: "discharge" })))).toEqual([
      ...["pressure 400000", "pressure 2000000"],
    ]);
    // superheat told later is worked out of pressures that nobody wrote down
    expect(standing(read, deed, note("", r("superheat", 6)))).toEqual(["superheat 6"]);
    const head = note("", r("pressure", 2e6, { at: "discharge" }));
    expect(standing(head, deed, note("", r("superheat", 6)))).toHaveLength(2);
    expect(standing(head, deed, note("", r("subcooling", 6)))).toEqual(["subcooling 6"]);
    // weights, vacuums and what stood on a plate stay
    const vacuum = note("", r("vacuum", 60));
    expect(standing(vacuum, deed, note("", r("vacuum", 50)))).toHaveLength(2);
    const plate = note("", r("current", 20, { rating: "RLA" }));
    expect(standing(plate, deed, note("", r("current", 15)))).toHaveLength(2);
    for (const [part, quantity] of [
      ...([
        ["capacitor", "capacitance"],
        ["contactor", "resistance"],
      ] as const),
      ["inverter board", "diode_drop"] as const,
    ]) {
      const old = note("", r(quantity, 1));
      expect([part, standing(old, note("", did("replaced", part)))]).toEqual([part, []]);
      expect(standing(old, note("", did("replaced", "belt")))).toHaveLength(1);
    }
  });
});

test("a cause is put right by its own part, unless it was in vain; a leak by closing and charging", () => {
  const mended = (fault: string, ...notes: readonly CaseNote[]) =>
    isMended(fault, sceneFor(line, ...notes));
  const put = (what: string) => note(`${what} replaced`, did("replaced", what));
  expect(mended("contactor_failed", put("contactor"))).toBe(true);
  expect(mended("contactor_failed", put("capacitor"))).toBe(false);
  expect(mended("contactor_failed", put("contactor"), note("still trips"))).toBe(false);
  expect(mended("compressor_winding_open", put("compressor"))).toBe(true);
  expect(mended("noncondensables", put("contactor"))).toBe(false);
  const brazed = note("", did("brazed"));
  const charge = note("", r("mass", 3, { action: "charged" }));
  expect(mended("system_leaking", brazed)).toBe(false);
  expect(mended("system_leaking", charge)).toBe(false);
  expect(mended("system_leaking", brazed, charge)).toBe(true);
  expect(mended("system_leaking", brazed, note("", did("charged")))).toBe(true);
  expect(mended("system_leaking", note("", did("tightened", "flare")), charge)).toBe(true);
  expect(mended("system_leaking", note("", did("tightened", "lug")), charge)).toBe(false);
});

test("a part is the one that is known by its letters, else the only one of its kind and number", () => {
  const known = ["BB-2", "OU-1", "BB-3 port 1"];
  for (const [said, name] of [
    ...[
      ["bb 2", "BB-2"],
      ["box 2", "BB-2"],
      ["branch controller 2", "BB-2"],
      ["cu 1", "OU-1"],
    ],
    ...[
      ["outdoor unit 1", "OU-1"],
      ["box 3 port 1", "BB-3 port 1"],
    ],
  ])
    expect([said, knownPart(known, said ?? "")]).toEqual([said, name]);
  for (const said of ["box 4", "indoor 1", "box 3", "box"])
    expect(knownPart(known, said)).toBeUndefined();
  expect(knownPart(["BB-2", "BC-2"], "box 2")).toBeUndefined();
  expect(knownPart(["BB-2", "BC-2"], "BC 2")).toBe("BC-2");
});

describe("a fault or a step applies", () => {
  const fits = (
    where: Parameters<ReturnType<typeof whereIn>>[0],
    facts: EquipmentFacts,
    ...notes: readonly CaseNote[]
  ) => whereIn(sceneFor(facts, ...notes))(where);
  test("where nothing that is known speaks against it", () => {
    for (const [where, facts] of [
      ...([
        [{ drive: "inverter" }, line],
        [{ phases: 1 }, line],
      ] as const),
      ...([[{ mode: "heating" }, { mode: "cooling" }]] as const),
      ...([[{ metering: "fixed_orifice" }, { metering: "expansion_valve" }]] as const),
      ...([
        [{ side: "gas" }, line],
        [{ machine: "reversing" }, { kind: "chiller" }],
      ] as const),
    ])
      expect([where, fits(where, facts)]).toEqual([where, false]);
    for (const where of [
      ...([{ drive: "inverter" }, { phases: 1 }, { mode: "heating" }] as const),
      ...([{ metering: "fixed_orifice" }, { machine: "reversing" }, undefined] as const),
    ])
      expect([where, fits(where, {})]).toEqual([where, true]);
    expect(fits({ side: "gas" }, { refrigerant: "R-32" })).toBe(true);
    expect(fits({ side: "gas" }, line, note("", r("superheat", 5)))).toBe(true);
    expect(fits({ machine: "reversing" }, { kind: "heat pump" })).toBe(true);
    expect(fits({ machine: "reversing" }, { kind: "chiller" }, note("4 way valve"))).toBe(true);
    expect(fits({ phases: 1, capacitor: true }, line)).toBe(false);
    expect(fits({ phases: 1, capacitor: true }, line, note("", r("capacitance", 4e-5)))).toBe(true);
    expect(fits({ phases: 1, capacitor: true }, line, note("fan cap is bulged"))).toBe(true);
  });
  test("to a running machine, unless it stands under vacuum or nitrogen", () => {
    const running = { state: "running" } as const;
    const vacuum = note("", r("vacuum", 60));
    const side = note("", r("pressure", 8e5, { at: "suction" }));
    expect(fits(running, {}, side)).toBe(true);
    expect(fits(running, {}, vacuum)).toBe(false);
    expect(fits(running, {}, vacuum, side)).toBe(true);
    const test = note("nitrogen at 400", r("pressure", 2.8e6, { said: "400" }), did("nitrogen_in"));
    expect(fits(running, {}, test)).toBe(false);
    expect(fits(running, {}, note("400", r("pressure", 2.8e6, { said: "400" })))).toBe(true);
  });
});

describe("the causes", () => {
  const chance = (fault: string, signs: readonly string[], ...notes: readonly CaseNote[]) =>
    diagnose(
      signs.map((sign) => ({ sign, says: sign })),
      sceneFor({}, ...notes),
    ).find((one) => one.fault === fault)?.probability ?? 0;
  test("of the side that nobody measured are the less likely", () => {
    const volts = note("", r("voltage", 460));
    const gas = note("", r("pressure", 8e5, { at: "suction" }));
    const shell = note("", r("temperature", 30, { at: "shell" }));
    const [none, electrical, side] = [[note("")], [volts], [gas]].map((notes) =>
      chance("refrigerant_undercharge", [], ...notes),
    );
    expect(electrical).toBeLessThan(none ?? 0);
    expect(side).toBeGreaterThan(none ?? 1);
    expect(chance("refrigerant_undercharge", [], volts, gas)).toBeCloseTo(none ?? 0, 12);
    // how warm the shell is, is asked for electrical tests
    expect(chance("refrigerant_undercharge", [], volts, shell)).toBeCloseTo(electrical ?? 0, 12);
  });
  test("name each sign that speaks for or against them once, the weightiest first", () => {
    const found = diagnose(
      [
        { sign: "insulation:ground_fault", says: "0.2 megohm" },
        { sign: "insulation:ground_fault", says: "0.2 megohm" },
        { sign: "insulation:ground_fault", says: "0.3 megohm" },
      ],
      sceneFor({}),
    );
    expect(found[0]?.fault).toBe("compressor_winding_grounded");
    expect(found[0]?.for).toEqual(["0.2 megohm", "0.3 megohm"]);
    expect(found[0]?.against).toEqual([]);
    const sound = found.find(({ fault }) => fault === "no_fault");
    expect(sound?.against).toEqual(["0.2 megohm", "0.3 megohm"]);
    expect(sound?.for).toEqual([]);
    expect(found.map(({ probability }) => probability)).toEqual(
      found.map(({ probability }) => probability).sort((a, b) => b - a),
    );
  });
});

describe("a company's own limit", () => {
  const found = (more: Partial<Finding>): Finding => ({
    ...{ about: "system", check: "superheat", level: "good", says: "Usual", brief: "usual" },
    ...{ values: { superheat_K: 6 }, basis: "common practice", signs: ["superheat:usual"] },
    ...more,
  });
  const under = (limits: Limits, more: Partial<Finding> = {}) => {
    const scene = sceneOf({
      ...caseOf({}, [note("", r("pressure", 1, { figure: { number: "1", unit: "bar" } }))]),
      limits,
    });
    return underOwnLimits([found(more)], scene)[0];
  };
  const side = { superheat: { least: 4, most: 8 } };
  test("stands in for the usual one on both sides, both ends within it", () => {
    for (const [value, level, words] of [
      ...([
        [3.9, "watch", "under"],
        [4, "good", "within"],
        [8, "good", "within"],
      ] as const),
      [8.1, "bad", "over"] as const,
    ]) {
      const one = under(side, { values: { superheat_K: value } });
      expect([value, one?.level]).toEqual([value, level]);
      expect(one?.brief).toBe(`superheat ${value} K, ${words} the company's 4 K to 8 K`);
      expect(one?.says).toContain("without that limit: usual");
      expect(one?.basis).toBe("company's own limit");
      expect(one?.signs).toEqual(["superheat:usual"]);
    }
    expect(under({ superheat: { most: 5 } })?.level).toBe("bad");
    expect(under({ superheat: { least: 7 } })?.level).toBe("watch");
    expect(under({ superheat: { least: 7 } })?.brief).toContain("the company's 7 K");
  });
  test("makes nothing graver lighter, where it is broken", () => {
    expect(under(side, { level: "bad", values: { superheat_K: 3 } })?.level).toBe("bad");
    expect(under(side, { level: "bad", values: { superheat_K: 6 } })?.level).toBe("good");
  });
  test("leaves what is of another check, has no figure or could not be judged", () => {
    for (const more of [
      ...[{ check: "subcooling" as const }, { values: {} }, { level: "unknown" as const }],
      ...[{ basis: "target" }, { signs: [] }, { values: { superheat_K: 1 } }],
    ])
      expect(under(side, more)).toEqual(found(more));
    expect(under({})).toEqual(found({}));
  });
  const rows: readonly (readonly [Limits, Partial<Finding>, string])[] = [
    [
      { voltage_unbalance: { most: 2 } },
      { check: "supply", values: { unbalance_percent: 3 } },
      "watch",
    ],
    [
      { voltage_unbalance: { most: 4 } },
      { check: "supply", values: { unbalance_percent: 3 } },
      "good",
    ],
    [
      { voltage_off_plate: { most: 5 } },
      { check: "supply", values: { off_plate_percent: -6 } },
      "bad",
    ],
    [
      { winding_unbalance: { most: 2 } },
      { check: "winding", values: { winding_unbalance_percent: 3 } },
      "watch",
    ],
    [
      { capacitance_error: { most: 3 } },
      { check: "capacitor", values: { capacitance_error_percent: -4 } },
      "bad",
    ],
    [{ subcooling: { least: 4 } }, { check: "subcooling", values: { subcooling_K: 3 } }, "watch"],
    [{ subcooling: { most: 4 } }, { check: "subcooling", values: { subcooling_K: 5 } }, "bad"],
    [
      { compression_ratio: { most: 4 } },
      { check: "compression", values: { compression_ratio: 5 } },
      "watch",
    ],
    [
      { discharge_temperature: { most: 90 } },
      { check: "discharge_temperature", values: { discharge_Cel: 95 } },
      "bad",
    ],
    [
      { temperature_split: { least: 8 } },
      { check: "temperature_split", values: { temperature_split_K: 6 } },
      "watch",
    ],
    [{ static_pressure: { most: 100 } }, { check: "airflow", values: { static_Pa: 120 } }, "bad"],
    [
      { leak_rate: { most: 10 } },
      { check: "leak_rate", values: { leak_rate_percent_per_year: 12 } },
      "bad",
    ],
  ];
  test.each(rows)("%j of %j: %s", (limits, more, level) => {
    expect(under(limits, more)?.level).toBe(level);
    expect(under(limits, more)?.basis).toBe("company's own limit");
  });
  test.each<[Limits, Partial<Finding>]>([
    [
      { voltage_unbalance: { most: 9 } },
      { check: "supply", level: "bad", values: { unbalance_percent: 5.1 } },
    ],
    [
      { winding_unbalance: { most: 50 } },
      {
        check: "winding",
        level: "bad",
        values: { winding_unbalance_percent: 30 },
        signs: ["winding:shorted"],
      },
    ],
    [
      { capacitance_error: { most: 99 } },
      {
        check: "capacitor",
        level: "bad",
        values: { capacitance_error_percent: -95 },
        signs: ["capacitor:open"],
      },
    ],
    [
      { compression_ratio: { least: 1 } },
      {
        check: "compression",
        level: "watch",
        values: { compression_ratio: 1.1 },
        signs: ["ratio:flat"],
      },
    ],
    [
      { discharge_temperature: { least: 10 } },
      {
        check: "discharge_temperature",
        level: "watch",
        values: { discharge_Cel: 20 },
        signs: ["discharge:wet"],
      },
    ],
    [
      { static_pressure: { most: 500 } },
      { check: "airflow", level: "bad", values: { static_Pa: 274 }, basis: "plate rating" },
    ],
    [
      { leak_rate: { most: 50 } },
      { check: "leak_rate", level: "bad", values: { leak_rate_percent_per_year: 40 } },
    ],
  ])("%j never loosens %j", (limits, more) => {
    expect(under(limits, more)).toEqual(found(more));
  });
});

describe("a circuit", () => {
  const split: EquipmentFacts = { drive: "line", refrigerant: "R-410A" };
  const only = (facts: EquipmentFacts, ...notes: readonly CaseNote[]) =>
    circuitsOf(sceneFor(facts, ...notes));
  const p = (at: Reading["at"], psi: number, more: Partial<Reading> = {}) =>
    r("pressure", psi * 6894.757, { ...(at === undefined ? {} : { at }), ...more });
  const t = (at: NonNullable<Reading["at"]>, cel: number, more: Partial<Reading> = {}) =>
    r("temperature", cel, { at, ...more });
  test("is known by its lines and pressures; what is bound, at rest or of air is none of it", () => {
    const [one, ...more] = only(
      split,
      note("", p("suction", 118), t("suction", 12), p("liquid", 365), t("liquid", 38)),
    );
    expect(more).toEqual([]);
    expect(one).toMatchObject({ about: "system", refrigerant: "R-410A", highPlace: "liquid" });
    // 118 psig of R-410A boils at 40 F, 365 psig is at its bubble point at 110 F (saturation tables)
    expect(one?.evaporatingCel).toBeCloseTo(4.4, 0);
    expect(one?.bubbleCel).toBeCloseTo(43.2, 0);
    expect([one?.suctionCel, one?.liquidCel, one?.dischargeCel]).toEqual([12, 38, undefined]);
    expect(only(split, note("", r("temperature", 20, { at: "return_air" })))).toEqual([]);
    expect(only(split, note("", p("suction", 118, { relation: ">" })))).toEqual([]);
    expect(only(split)).toEqual([]);
  });
  test("prefers the liquid's pressure, and takes a cool 'discharge' for the liquid line", () => {
    const [both] = only(split, note("", p("discharge", 380), p("liquid", 365)));
    expect(both?.highPlace).toBe("liquid");
    const [cool] = only(
      split,
      note("", p("discharge", 365), t("discharge", 38, { said: "high side 100" })),
    );
    expect([cool?.liquidCel, cool?.dischargeCel]).toEqual([38, undefined]);
    const [hot] = only(
      split,
      note("", p("discharge", 365), t("discharge", 70, { said: "high side 158" })),
    );
    expect([hot?.liquidCel, hot?.dischargeCel]).toEqual([undefined, 70]);
    const [named] = only(
      split,
      note("", p("discharge", 365), t("discharge", 38, { said: "discharge 100" })),
    );
    expect([named?.liquidCel, named?.dischargeCel]).toEqual([undefined, 38]);
  });
  test("takes no line's temperature with a pressure of before the work", () => {
    const work = note("", did("charged"));
    const [apart] = only(split, note("", p("suction", 60)), work, note("", t("suction", 12)));
    expect(apart?.suctionCel).toBeUndefined();
    const [together] = only(split, note("", p("suction", 60)), note("", t("suction", 12)));
    expect(together?.suctionCel).toBe(12);
  });
  test("is each one that is named, with what is nameless where there is but one", () => {
    const of = (subject: string) => p("suction", 118, { subject });
    const about = (...some: readonly Reading[]) =>
      only(split, note("", some)).map((one) => [one.about, one.suctionCel]);
    expect(about(of("circuit 1"), of("circuit 2"), t("suction", 12))).toEqual([
      ...[
        ["circuit 1", undefined],
        ["circuit 2", undefined],
      ],
    ]);
    expect(about(of("circuit 1"), t("suction", 12))).toEqual([["circuit 1", 12]]);
    expect(about(of("fan 1"), t("suction", 12))).toEqual([["system", 12]]);
  });
  test("has its lift from pressures of one look, none where the two were read apart from work", () => {
    const psi = (pa?: number) => (pa === undefined ? undefined : Math.round(pa / 6894.757 - 14.7));
    const lift = (...notes: readonly CaseNote[]) => {
      const [one] = only(split, ...notes);
      return [psi(one?.lift?.suctionPa), psi(one?.lift?.highPa)];
    };
    expect(lift(note("", p("suction", 118), p("discharge", 365)))).toEqual([118, 365]);
    expect(lift(note("", p("suction", 118)), note("", p("discharge", 365)))).toEqual([118, 365]);
    expect(
      lift(note("", p("suction", 60)), note("", did("charged")), note("", p("discharge", 365))),
    ).toEqual([undefined, undefined]);
    // gas is pushed into the condenser, it is no lower than the liquid
    expect(lift(note("", p("suction", 118), p("liquid", 365), p("discharge", 165)))).toEqual([
      ...[118, 365],
    ]);
  });
});
