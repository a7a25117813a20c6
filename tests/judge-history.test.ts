import { describe, expect, test } from "vitest";
import { judge } from "../src/judge/judge.ts";
import type { CaseNote, EquipmentFacts, Finding, PastCase, Reading } from "../src/model.ts";
import { kelvinPerFahrenheit } from "../src/physics/constants.ts";
import { caseOf, did, megs, note, pairs, r, volts } from "./case-builder.ts";

/** What a unit's own earlier visits tell of the figures of today. */

const F = kelvinPerFahrenheit;
const split: EquipmentFacts = { drive: "line", refrigerant: "R-410A", metering: "expansion_valve" };
const motor: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };
const visit = (job: number, ...notes: readonly CaseNote[]): PastCase => ({
  ...{ job, closed: `2026-0${job}-01T12:00:00Z`, notes },
});
function findingsOf(
  facts: EquipmentFacts,
  history: readonly PastCase[],
  ...notes: readonly CaseNote[]
): readonly Finding[] {
  return judge({ ...caseOf(facts, notes, history), at: "2026-05-01T12:00:00Z" }).findings;
}

describe("superheat and subcooling", () => {
  const heat = (superheatK: number, ...more: readonly Reading[]) =>
    note("", r("superheat", superheatK), ...more);
  const trend = (history: readonly PastCase[], ...notes: readonly CaseNote[]) =>
    findingsOf(split, history, ...notes).filter(({ check }) => check === "history");
  test("are told against the last visit where they moved 5 F or more, and no less", () => {
    const past = [visit(3, heat(6))];
    expect(trend(past, heat(6 + 4.9 * F))).toEqual([]);
    expect(trend(past, heat(6 - 4.9 * F))).toEqual([]);
    const [up, ...more] = trend(past, heat(6 + 5.1 * F));
    expect(more).toEqual([]);
    expect(up?.level).toBe("watch");
    expect(up?.says).toBe("Superheat 16 F against 11 F on the last visit");
    expect(up?.brief).toBe("superheat was 11 F last visit");
    expect(up?.about).toBe("system");
    expect(trend(past, heat(6 - 5.1 * F))).toHaveLength(1);
    const cool = (kelvin: number) => note("", r("subcooling", kelvin));
    expect(trend([visit(3, cool(6))], cool(3))[0]?.says).toBe(
      "Subcooling 5 F against 11 F on the last visit",
    );
    // of two figures that nobody read at both visits there is none
    expect(trend([visit(3, cool(6))], heat(12))).toEqual([]);
  });
  test("are held against the latest visit that measured anything", () => {
    const talk = visit(4, note("looked around"));
    expect(trend([visit(2, heat(12)), visit(3, heat(6)), talk], heat(12))).toHaveLength(1);
    expect(trend([visit(2, heat(6)), visit(3, heat(12)), talk], heat(12))).toEqual([]);
    expect(trend([talk], heat(12))).toEqual([]);
  });
  test("are not held against a day of other weather, nor where the machine holds them itself", () => {
    const outdoors = (cel: number) => r("temperature", cel, { at: "outdoor_air" });
    const past = [visit(3, heat(6, outdoors(20)))];
    expect(trend(past, heat(12, outdoors(20 + 14.9 * F)))).toHaveLength(1);
    expect(trend(past, heat(12, outdoors(20 - 14.9 * F)))).toHaveLength(1);
    expect(trend(past, heat(12, outdoors(20 + 15.1 * F)))).toEqual([]);
    expect(trend(past, heat(12))).toHaveLength(1);
    const zones: EquipmentFacts = { ...split, drive: "inverter", kind: "multi-zone outdoor unit" };
    expect(findingsOf(zones, past, heat(12)).filter(({ check }) => check === "history")).toEqual(
      [],
    );
  });
});

describe("insulation", () => {
  const leads = (ohm: number, more: Partial<Reading> = {}) =>
    note("", megs([ohm, ohm, ohm], { temperature: 40, ...more }));
  const trend = (history: readonly PastCase[], ...notes: readonly CaseNote[]) =>
    findingsOf(motor, history, ...notes).filter(({ basis }) => basis === "own history");
  // IEEE 43-2013 12 compares with the winding's own history; the bands are common practice
  test("holds down to a half of what it was, and is told from there on", () => {
    const past = [visit(3, leads(8e8))];
    expect(trend(past, leads(4.1e8)).map(({ level }) => level)).toEqual(["good"]);
    const [half] = trend(past, leads(2e8));
    expect(half?.level).toBe("watch");
    expect(half?.says).toContain("200 megohm against 800 megohm earlier: down by a factor of 4");
    expect(half?.signs).toHaveLength(1);
    const [tenth] = trend(past, leads(2e7));
    expect(tenth?.brief).toBe("down by a factor of 40");
    expect(tenth?.signs).not.toEqual(half?.signs);
  });
  test("is compared with the last test at the same volts, of this compressor", () => {
    expect(trend([visit(2, leads(2e8)), visit(3, leads(8e8))], leads(2e8))[0]?.level).toBe("watch");
    expect(trend([visit(2, leads(8e8)), visit(3, leads(2e8))], leads(2e8))[0]?.level).toBe("good");
    const at = (volts: number) => ({ test_voltage: volts });
    expect(trend([visit(3, leads(8e8, at(1000)))], leads(2e8, at(500)))).toEqual([]);
    expect(trend([visit(3, leads(8e8, at(500)))], leads(2e8, at(500)))).toHaveLength(1);
    expect(trend([visit(3, leads(8e8))], leads(2e8, at(500)))).toHaveLength(1);
    const fitted = visit(3, note("", did("replaced", "compressor")));
    expect(trend([visit(2, leads(8e8)), fitted], leads(2e8))).toEqual([]);
    expect(trend([fitted, visit(4, leads(8e8))], leads(2e8))).toHaveLength(1);
    for (const more of [{ rating: "nominal" }, { doubtful: true }] as const)
      expect(trend([visit(3, leads(8e8, more))], leads(2e8))).toEqual([]);
  });
  test("that was only bounded is told as a bound, and says nothing where it is one now", () => {
    const over = { relation: ">" as const };
    expect(trend([visit(3, leads(2e9, over))], leads(2e8))[0]?.says).toContain(
      "more than 2 gigohm earlier: down by at least a factor of 10",
    );
    expect(trend([visit(3, leads(8e9))], leads(2e9, over))).toEqual([]);
    expect(trend([visit(3, leads(1e9))], leads(2e9, over)).map(({ level }) => level)).toEqual([
      "good",
    ]);
  });
});

describe("a second compressor", () => {
  const replaced = visit(2, note("", did("replaced", "compressor")));
  const open = note("", pairs([8, "OL", "OL"]));
  const told = (history: readonly PastCase[], ...notes: readonly CaseNote[]) =>
    findingsOf(motor, history, ...notes).filter(({ check }) => check === "history");
  test("that fails where one was replaced asks why, with its days, until volts were recorded", () => {
    const [one] = told([replaced], open);
    expect(one?.brief).toBe("second compressor, one replaced 89 days ago");
    expect(one?.says).toContain("Supply volts under load were never recorded");
    const measured = told([replaced], open, note("", volts([460, 461, 459])));
    expect(measured[0]?.says).not.toContain("never recorded");
    const before = visit(1, note("", volts([460, 461, 459])));
    expect(told([before, replaced], open)[0]?.says).not.toContain("never recorded");
    const { closed: _closed, ...undated } = replaced;
    expect(told([undated], open)[0]?.brief).toBe(
      "second compressor, one replaced on an earlier job",
    );
  });
  test("is no matter where none was replaced, or nothing fails now", () => {
    expect(told([visit(2, note("", did("replaced", "contactor")))], open)).toEqual([]);
    expect(told([replaced], note("", pairs([8, 8, 8])))).toEqual([]);
    expect(told([], open)).toEqual([]);
  });
});
