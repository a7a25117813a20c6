import { describe, expect, test } from "vitest";
import type { Job, JobReading, JobStatement, Reading, Statement } from "../src/model.ts";
import { fileOf, gapsOf, ledgerOf } from "../src/record/gaps.ts";
import { foldJob } from "../src/record/job.ts";
import { r, seen } from "./case-builder.ts";
import { act, entryOf, kept, line, minuteOf } from "./support/job-lines.ts";

/** What proves a claim and what only looks like it: each at the edge where it turns. */

const base = { said: "", spans: [], rule: "test" } as const;
const opened = foldJob([
  entryOf(0, { opens: { site: "Gull Wharf", equipment: "OU-3", channel: "south" } }),
]);

interface Given {
  readonly said?: readonly JobStatement[];
  readonly readings?: readonly JobReading[];
  readonly words?: readonly string[];
}
function job({ said = [], readings = [], words = [] }: Given, more: Partial<Job> = {}): Job {
  if (opened === undefined) throw new Error("no job");
  const timeline = words.map((says, at) => ({
    ...{ at: minuteOf(at), who: "bram", kind: "note", says, message: `m${at}` },
  }));
  return { ...opened, statements: said, readings, timeline, ...more };
}
const lacks = (given: Given, gap: string): boolean => gapsOf(job(given), {}).includes(gap);

/** Fitted at minute 10, so that what is read before it tells nothing of it. */
const fitted = (part: string, minute = 10): JobStatement =>
  line(minute, { kind: "part", part, state: "fitted", ...base });
const mass = (action: "charged" | "recovered", minute = 10) =>
  kept(minute, r("mass", 3, { action }));
const names = (minute: number, statement: Statement) => line(minute, statement);
const cylinder = (said: string, about = "cylinder"): Statement => ({
  ...{ kind: "note", about, ...base, said },
});

/** Each reading beside a claim made at minute 10: whether it closes the gap. */
function proven(gap: string, said: readonly JobStatement[], more: readonly JobReading[] = []) {
  return (...readings: readonly JobReading[]): boolean =>
    !lacks({ said, readings: [...more, ...readings] }, gap);
}

test("what was taken back, doubted, of the plate or an earlier day proves and claims nothing", () => {
  const weight = proven("weight charged", [line(10, act("circuit_opened"))]);
  expect(weight(mass("charged"))).toBe(true);
  for (const gone of [
    ...([{ undone: true }, { deleted: true }, { doubtful: true }, { earlier: true }] as const),
    ...([{ rating: "nameplate_charge" }, { replaced_by: "1.9.0" }] as const),
  ]) {
    expect([gone, weight({ ...mass("charged"), ...gone })]).toEqual([gone, false]);
    expect(gapsOf(job({ readings: [{ ...mass("charged"), ...gone }] }), {})).toEqual([]);
  }
  for (const gone of [{ undone: true }, { deleted: true }] as const)
    expect(gapsOf(job({ said: [{ ...fitted("contactor"), ...gone }] }), {})).toEqual([]);
});

describe("running amps", () => {
  const amps = proven("running amps", [fitted("contactor")]);
  test("are read after the part is in, and neither starting nor a peak", () => {
    expect(amps()).toBe(false);
    expect(amps(kept(9, r("current", 14)))).toBe(false);
    expect(amps(kept(10, r("current", 14)))).toBe(true);
    expect(amps(kept(11, r("current", 14, { state: "running" })))).toBe(true);
    expect(amps(kept(11, r("current", 90, { state: "start" })))).toBe(false);
    expect(amps(kept(11, r("current", 90, { stat: "peak" })))).toBe(false);
    expect(amps(kept(11, r("voltage", 460)))).toBe(false);
  });
  test("are asked for behind an electrical part, of whatever fits it first, and no other", () => {
    for (const part of ["contactor", "run capacitor", "control board", "fan motor", "compressor"])
      expect([part, lacks({ said: [fitted(part)] }, "running amps")]).toEqual([part, true]);
    for (const part of ["drier", "filter", "belt"])
      expect([part, lacks({ said: [fitted(part)] }, "running amps")]).toEqual([part, false]);
    const late = [fitted("relay", 20), fitted("contactor", 10)];
    expect(lacks({ said: late, readings: [kept(15, r("current", 14))] }, "running amps")).toBe(
      false,
    );
    const ordered = line(10, { kind: "part", part: "contactor", state: "ordered", ...base });
    expect(lacks({ said: [ordered] }, "running amps")).toBe(false);
    const swap = (more: object) => [line(10, act("replaced", { what: "contactor", ...more }))];
    expect(lacks({ said: swap({}) }, "running amps")).toBe(true);
    expect(lacks({ said: swap({ planned: true }) }, "running amps")).toBe(false);
    expect(lacks({ said: [line(10, act("replaced"))] }, "running amps")).toBe(false);
  });
});

describe("the circuit that was opened", () => {
  const openings: readonly JobStatement[] = [
    ...[line(10, act("circuit_opened")), line(10, act("repaired", { circuit: "open" }))],
    ...[fitted("filter drier"), fitted("expansion valve")],
  ];
  test.each(openings)("wants weights, a pressure test and a vacuum: %#", (said) => {
    expect(gapsOf(job({ said: [said] }), {})).toEqual([
      ...["weight recovered", "weight charged", "pressure test", "vacuum hold"],
    ]);
  });
  test("held its pressure where nitrogen was in and a pressure was read at no side", () => {
    const [open = fitted("drier")] = openings;
    const nitrogen = line(11, act("nitrogen_in"));
    const held = (said: readonly JobStatement[], ...readings: readonly Reading[]) =>
      proven("pressure test", said)(...readings.map((one) => kept(12, one)));
    expect(held([open, nitrogen], r("pressure", 2e6))).toBe(true);
    expect(held([open, line(11, act("brazed", { circuit: "nitrogen" }))], r("pressure", 2e6))).toBe(
      true,
    );
    expect(held([open], r("pressure", 2e6))).toBe(false);
    expect(held([open, nitrogen])).toBe(false);
    expect(held([open, nitrogen], r("pressure", 2e6, { at: "suction" }))).toBe(false);
    const planned = line(11, act("nitrogen_in", { planned: true }));
    expect(held([open, planned], r("pressure", 2e6))).toBe(false);
  });
  test("held its vacuum where it was read twice, or once with its time", () => {
    const vacuum = proven("vacuum hold", openings.slice(0, 1));
    expect(vacuum(kept(12, r("vacuum", 50)))).toBe(false);
    expect(vacuum(kept(12, r("vacuum", 50)), kept(20, r("vacuum", 60)))).toBe(true);
    expect(vacuum(kept(12, r("vacuum", 50, { after_s: 600 })))).toBe(true);
    expect(vacuum(kept(12, r("vacuum", 60, { series: [50, 60] })))).toBe(true);
  });
});

describe("a leak is repaired", () => {
  test.each(["flare", "the leak", "joint", "evaporator coil"])("at the %s", (what) => {
    expect(gapsOf(job({ said: [line(10, act("repaired", { what }))] }), {})).toEqual([
      ...["pressure test", "vacuum hold"],
    ]);
  });
  test("by brazing, which wants nitrogen flowing; a repaired wire is none", () => {
    const brazed = [line(10, act("brazed"))];
    expect(gapsOf(job({ said: brazed }), {})).toEqual([
      ...["pressure test", "vacuum hold", "nitrogen flow while brazing"],
    ]);
    expect(gapsOf(job({ said: [line(10, act("repaired", { what: "wire" }))] }), {})).toEqual([]);
    expect(gapsOf(job({ said: [line(10, act("repaired"))] }), {})).toEqual([]);
    for (const words of ["nitrogen trickling through", "purged it with nitrogen"])
      expect(lacks({ said: brazed, words: [words] }, "nitrogen flow while brazing")).toBe(false);
    for (const words of ["nitrogen bottle is empty", "air flow is fine"])
      expect(lacks({ said: brazed, words: [words] }, "nitrogen flow while brazing")).toBe(true);
  });
});

describe("refrigerant", () => {
  const place = "where it leaked, or what found no leak";
  test("that was added wants its cylinder and where it leaked", () => {
    const readings = [mass("charged")];
    expect(gapsOf(job({ readings }), {})).toEqual(["cylinder of the charge", place]);
    for (const found of [
      ...[seen("leak_found"), seen("no_leak_found"), seen("oil_stain")],
      ...[act("brazed"), act("repaired")],
    ])
      expect(lacks({ readings, said: [line(11, found)] }, place)).toBe(false);
    for (const other of [seen("hums"), act("tightened")])
      expect(lacks({ readings, said: [line(11, other)] }, place)).toBe(true);
  });
  test("is of a cylinder that is named beside its own weight, or beside none", () => {
    const charge = "cylinder of the charge";
    const both = [mass("recovered", 5), mass("charged", 10)];
    const said = (minute: number, statement: Statement) => [names(minute, statement)];
    expect(lacks({ readings: both, said: said(10, cylinder("cylinder 31")) }, charge)).toBe(false);
    expect(lacks({ readings: both, said: said(20, cylinder("cylinder 31")) }, charge)).toBe(false);
    expect(lacks({ readings: both, said: said(5, cylinder("cylinder 31")) }, charge)).toBe(true);
    expect(
      lacks({ readings: both, said: said(5, cylinder("cylinder 31")) }, "cylinder number"),
    ).toBe(false);
    expect(
      lacks({ readings: both, said: said(10, cylinder("cylinder 31")) }, "cylinder number"),
    ).toBe(true);
    // of a cylinder that nobody named the recovered one is asked for alone
    expect(gapsOf(job({ readings: both }), {})).toEqual([place, "cylinder number"]);
  });
  test("is of a cylinder by its number, or by what was done with it", () => {
    const named = (statement: Statement) =>
      !lacks(
        { readings: [mass("charged")], said: [names(10, statement)] },
        "cylinder of the charge",
      );
    expect(named(cylinder("bottle 7", "gas"))).toBe(true);
    expect(named(cylinder("number 7"))).toBe(true);
    expect(named(cylinder("the full one"))).toBe(false);
    expect(named(cylinder("filter 7", "filter"))).toBe(false);
    expect(named(act("charged", { what: "from the tank" }))).toBe(true);
    expect(named(act("charged", { what: "the system" }))).toBe(false);
    expect(named(act("charged"))).toBe(false);
  });
  test("that went back where it came from needs no other cylinder", () => {
    const given = { readings: [mass("charged")], said: [] };
    for (const words of ["put it back", "its own charge", "same bottle", "went all back in"])
      expect([words, lacks({ ...given, words: [words] }, "cylinder of the charge")]).toEqual([
        ...[words, false],
      ]);
    expect(lacks({ ...given, words: ["i'm back"] }, "cylinder of the charge")).toBe(true);
  });
  test("is handled by people whose certificate the office knows, where it knows any", () => {
    const gap = "certificate of who handled refrigerant";
    const gaps = (who: string, people: Parameters<typeof gapsOf>[2]) =>
      gapsOf(job({ readings: [{ ...mass("charged"), who }] }), {}, people).includes(gap);
    const bram = { name: "Bram Stone", nickname: "Bram", certificate: "C-1", handles: ["U1"] };
    expect(gaps("bram", [bram])).toBe(false);
    expect(gaps("BRAM STONE", [bram])).toBe(false);
    expect(gaps("u1", [bram])).toBe(false);
    expect(gaps("ife", [bram])).toBe(true);
    expect(gaps("ife", [bram, { name: "ife" }])).toBe(true);
    expect(gaps("ife", [{ name: "ife" }])).toBe(false);
    expect(gaps("ife", [])).toBe(false);
    const amps = job({ readings: [{ ...kept(10, r("current", 4)), who: "ife" }] });
    expect(ledgerOf(amps, {}, [bram]).uncertified).toEqual([]);
    const undone = job({ readings: [{ ...mass("charged"), who: "ife", undone: true }] });
    expect(ledgerOf(undone, {}, [bram]).uncertified).toEqual([]);
  });
});

describe("a new compressor", () => {
  const said = [fitted("compressor")];
  const gap = (name: string, given: Given) =>
    lacks({ ...given, said: [...said, ...(given.said ?? [])] }, name);
  const serial = (field: "serial" | "model") =>
    line(11, { kind: "nameplate", field, value: "A1", ...base });
  test("wants both serials, the acid test and a drier", () => {
    const serials = "old and new serial";
    expect(gap(serials, { said: [serial("serial")] })).toBe(true);
    expect(gap(serials, { said: [serial("serial"), serial("model")] })).toBe(true);
    expect(gap(serials, { said: [serial("serial"), serial("serial")] })).toBe(false);
    for (const found of ["acid_found", "no_acid"] as const)
      expect(gap("acid test", { said: [line(11, seen(found))] })).toBe(false);
    expect(gap("acid test", { said: [line(11, seen("hums"))] })).toBe(true);
    for (const part of ["filter drier", "liquid dryer"])
      expect(gap("drier", { said: [fitted(part)] })).toBe(false);
    expect(gap("drier", { said: [fitted("contactor")] })).toBe(true);
  });
  test("wants pressure and line of the suction, or its superheat, after it is in", () => {
    const settled = "settled pressures and superheat";
    const pressure = r("pressure", 8e5, { at: "suction" });
    const warmth = r("temperature", 12, { at: "suction" });
    const set = (minute: number, ...some: readonly Reading[]) =>
      gap(settled, { readings: some.map((one) => kept(minute, one)) });
    expect(set(11, pressure, warmth)).toBe(false);
    expect(set(11, pressure)).toBe(true);
    expect(set(11, warmth)).toBe(true);
    expect(set(11, { ...pressure, at: "discharge" }, warmth)).toBe(true);
    expect(set(11, pressure, { ...warmth, at: "liquid" })).toBe(true);
    expect(set(9, pressure, warmth)).toBe(true);
    expect(set(11, r("superheat", 6))).toBe(false);
    expect(set(9, r("superheat", 6))).toBe(true);
  });
  test("wants a word on why the old one failed", () => {
    const why = "why it failed, or what was looked at";
    for (const words of ["died of a lost phase", "no other fault found, looked at the contactor"])
      expect(gap(why, { words: [words] })).toBe(false);
    expect(gap(why, { words: ["running fine"] })).toBe(true);
  });
});

test("a mended supply wants volts above a control circuit's, after it was said", () => {
  const said = [line(10, seen("upstream_fuse_open"))];
  const volts = proven("running volts", said);
  expect(volts()).toBe(false);
  expect(volts(kept(11, r("voltage", 460)))).toBe(true);
  expect(volts(kept(11, r("voltage", 90)))).toBe(false);
  expect(volts(kept(11, r("voltage", 91)))).toBe(true);
  expect(volts(kept(9, r("voltage", 460)))).toBe(false);
  expect(volts(kept(11, r("voltage", "OL")))).toBe(false);
});

test("gaps stand by what they cost, each once, bypasses before all; the file closes without any", () => {
  const said = [fitted("compressor"), line(11, act("brazed"))];
  const readings = [mass("charged", 12)];
  const gaps = gapsOf(job({ said, readings }), {});
  expect(new Set(gaps).size).toBe(gaps.length);
  const dear = ["weight recovered", "cylinder of the charge"];
  const cheap = ["drier", "settled pressures and superheat", "nitrogen flow while brazing"];
  const places = [...dear, "pressure test", "old and new serial", ...cheap].map((gap) =>
    gaps.indexOf(gap),
  );
  expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...places.slice(0, 2))).toBeLessThan(Math.min(...places.slice(2)));
  expect(Math.max(...places.slice(2, 4))).toBeLessThan(Math.min(...places.slice(4)));
  const machine = { ...job({}).machine, bypasses: [{ what: "switch", since: "", who: "bram" }] };
  expect(gapsOf(job({ said }, { machine }), {})[0]).toBe("switch bypass off");
  expect(fileOf(job({}, { status: "done" }), {})).toEqual({ state: "closed", gaps: [] });
  expect(fileOf(job({}), {})).toEqual({ state: "open", gaps: [] });
  expect(fileOf(job({ said }, { status: "done" }), {}).state).toBe("open");
});
