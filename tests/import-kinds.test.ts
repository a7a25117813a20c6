import { describe, expect, test } from "vitest";
import { importRows } from "../src/record/import/import-rows.ts";
import { readRegistry } from "../src/record/registry.ts";
import { openStore } from "../src/record/store.ts";

/** What each kind of office list is known by, and what its cells become. */

function taken(heads: readonly string[], ...rows: readonly (readonly string[])[]) {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const all = [heads, ...rows].map((cells, at) => ({ line: at + 1, cells: [...cells] }));
  const result = importRows(opened.store, all);
  return { result, registry: readRegistry(opened.store) };
}
function kindOf(...heads: readonly string[]): string {
  const { result } = taken(heads);
  return typeof result === "string" ? "none" : result.plural;
}
const badOf = ({ result }: ReturnType<typeof taken>): string =>
  typeof result === "string" ? result : (result.bad[0]?.reason ?? "");

test.each([
  [["site", "street"], "sites"],
  [["name", "street"], "sites"],
  [["name", "city"], "sites"],
  [["name", "phone"], "people"],
  [["first name", "last name", "role"], "people"],
  [["technician", "certificate"], "people"],
  [["name", "notes"], "none"],
  [["last name", "role"], "none"],
  [["tag", "refrigerant"], "equipment"],
  [["cylinder", "gas"], "cylinders"],
  [["serial no", "tare"], "cylinders"],
  [["serial no", "gas"], "none"],
  [["fault code", "meaning"], "fault codes"],
  [["fault code", "first step"], "none"],
  [["part no", "description"], "parts"],
  [["limit", "value"], "limits"],
  [["limit", "min"], "limits"],
  [["color", "shape"], "none"],
] as const)("headings %j tell of %s", (heads, kind) => {
  expect(kindOf(...heads)).toBe(kind);
});

describe("a unit", () => {
  const unit = (heads: readonly string[], ...cells: readonly string[]) =>
    taken(["tag", ...heads], ["OU-3", ...cells]);
  test("has its supply in one cell or in two, its own columns first, and never of two voltages", () => {
    const supply = (cell: string) => unit(["v/ph/hz"], cell).registry.equipment[0];
    for (const cell of ["460/3/60", "460-3-60", "460 v 3 ph 60 hz"])
      expect([cell, supply(cell)]).toEqual([cell, { tag: "OU-3", supply_V: 460, phases: 3 }]);
    expect(supply("208-1")).toEqual({ tag: "OU-3", supply_V: 208, phases: 1 });
    expect(badOf(unit(["v/ph/hz"], "208/230-1-60"))).toContain("names two voltages");
    expect(badOf(unit(["v/ph/hz"], "high"))).toContain("is no supply");
    const both = unit(["v/ph/hz", "volts"], "460/3/60", "480").registry.equipment[0];
    expect(both).toEqual({ tag: "OU-3", supply_V: 480, phases: 3 });
  });
  test("has lines only with their length, each with the length and what the charge covers", () => {
    const heads = ["liquid line", "suction line", "line length", "charge covers"];
    const lines = (...cells: readonly string[]) => unit(heads, ...cells);
    expect(lines("3/8", "7/8", "50 ft", "25 ft").registry.equipment[0]?.line_set).toEqual([
      { line: "liquid", size_in: 0.375, length_m: 15.24, covered_m: 7.62 },
      { line: "suction", size_in: 0.875, length_m: 15.24, covered_m: 7.62 },
    ]);
    expect(lines("3/8", "", "50 ft", "").registry.equipment[0]?.line_set).toEqual([
      { line: "liquid", size_in: 0.375, length_m: 15.24 },
    ]);
    expect(lines("", "7/8", "50 ft", "").registry.equipment[0]?.line_set).toHaveLength(1);
    expect(badOf(lines("3/8", "", "", ""))).toContain("without its length");
    expect(lines("", "", "50 ft", "").registry.equipment).toEqual([{ tag: "OU-3" }]);
  });
  test.each([
    ["metering device", "TXV", { metering: "expansion_valve" }],
    ["metering device", "piston", { metering: "fixed_orifice" }],
    ["drive", "VFD", { drive: "inverter" }],
    ["drive", "across the line", { drive: "line" }],
    ["use", "commercial refrigeration", { use: "commercial_refrigeration" }],
    ["leak regime", "40 CFR 84", { leak_regime: "us_84" }],
    ["leak method", "rolling", { leak_method: "rolling" }],
    ["receiver", "yes", { receiver: true }],
    ["rla", "20.5 A", { rla_A: 20.5 }],
    ["factory charge", "10 lb", { charge_kg: 4.5359237 }],
    ["factory charge", "4.5 kg", { charge_kg: 4.5 }],
    ["rooms", "101, 102", { places: ["101", "102"] }],
    ["last addition", "2026-03-04", { last_addition: "2026-03-04" }],
  ])("%s %j", (heading, cell, facts) => {
    expect(unit([heading], cell).registry.equipment[0]).toEqual({ tag: "OU-3", ...facts });
  });
  test.each([
    ["metering device", "unknown"],
    ["rla", "0"],
    ["rla", "-3"],
    ["factory charge", "10 ft"],
    ["last addition", "soon"],
  ])("is refused where %s is %j", (heading, cell) => {
    const given = unit([heading], cell);
    expect(given.registry.equipment).toEqual([]);
    expect(badOf(given)).toContain(heading);
  });
  test("of several circuits is one unit, with one full charge only where all have the same", () => {
    const heads = ["tag", "circuit", "refrigerant", "charge"];
    const circuits = (...rows: readonly (readonly string[])[]) =>
      taken(heads, ...rows).registry.equipment;
    expect(circuits(["CH-1", "1", "R-32", "8 kg"], ["CH-1", "2", "R-32", "8 kg"])).toEqual([
      {
        ...{ tag: "CH-1", refrigerant: "R-32", charge_kg: 8 },
        circuits: [
          { circuit: "1", refrigerant: "R-32", charge_kg: 8 },
          { circuit: "2", refrigerant: "R-32", charge_kg: 8 },
        ],
      },
    ]);
    const [uneven] = circuits(["CH-1", "1", "R-32", "8 kg"], ["CH-1", "2", "", "9 kg"]);
    expect(uneven).not.toHaveProperty("charge_kg");
    expect(uneven?.circuits?.[1]).toEqual({ circuit: "2", charge_kg: 9 });
    const [bare] = circuits(["CH-1", "1", "R-32", ""]);
    expect(bare).toEqual({
      tag: "CH-1",
      refrigerant: "R-32",
      circuits: [{ circuit: "1", refrigerant: "R-32" }],
    });
  });
});

test("a person's name is one, whether it stands in one column or in two", () => {
  const people = (heads: readonly string[], ...cells: readonly string[]) =>
    taken(heads, cells).registry.people;
  expect(people(["first name", "last name", "role"], "Bram", "Stone", "tech")).toEqual([
    { name: "Bram Stone", nickname: "Bram", role: "tech" },
  ]);
  expect(people(["name", "role"], "Bram Stone", "tech")).toEqual([
    { name: "Bram Stone", role: "tech" },
  ]);
  expect(people(["first name", "last name", "role"], "", "Stone", "tech")).toEqual([
    { name: "Stone", role: "tech" },
  ]);
  expect(badOf(taken(["first name", "last name", "role"], ["", "", "tech"]))).toContain(
    "the name is missing",
  );
});

test("a cylinder holds what the scale shows less its tare, where nobody wrote the net", () => {
  const heads = ["cylinder", "gross", "tare", "net"];
  const cylinder = (...cells: readonly string[]) =>
    taken(heads, ["22", ...cells]).registry.cylinders[0];
  expect(cylinder("40 kg", "12 kg", "")).toEqual({ number: "22", tare_kg: 12, net_kg: 28 });
  expect(cylinder("40 kg", "12 kg", "20 kg")).toEqual({ number: "22", tare_kg: 12, net_kg: 20 });
  expect(cylinder("40 kg", "", "")).toEqual({ number: "22" });
  expect(cylinder("12 kg", "12 kg", "")).toEqual({ number: "22", tare_kg: 12, net_kg: 0 });
  expect(badOf(taken(heads, ["22", "11 kg", "12 kg", ""]))).toContain("less than the tare");
});

describe("a row", () => {
  const heads = ["code", "shown on", "meaning"];
  const rows = (...all: readonly (readonly string[])[]) => taken(heads, ...all);
  test("of nothing but empty cells and dashes is none", () => {
    const { result, registry } = rows(["", " ", "-"], ["E4", "OU", "high pressure"]);
    expect(result).toMatchObject({ bad: [], counts: { added: 1 } });
    expect(registry.codes).toEqual([{ code: "E4", shown_on: "OU", meaning: "high pressure" }]);
  });
  test.each<[string, readonly string[]]>([
    ["meaning: the meaning is missing", ["E4", "OU", ""]],
    ["code: the code is missing", ["", "OU", "high pressure"]],
    ["has 4 cells, the headings are 3", ["E4", "OU", "high", "pressure"]],
    ["is the headings again", heads],
    ["looks like a total", ["Total", "", "12"]],
    ["looks like a total", ["Grand total", "", ""]],
    ["the cell holds 2001 letters", ["E4", "OU", "x".repeat(2001)]],
  ])("is refused: %s", (why, row) => {
    const given = rows(row);
    expect(badOf(given)).toContain(why);
    expect(given.registry.codes).toEqual([]);
  });
  test("is taken at the edge of what is refused", () => {
    const kept = rows(["E4", "OU", "x".repeat(2000)], ["total", "OU", "lost"], ["E5", "", "y", ""]);
    expect(badOf(kept)).toBe("");
    expect(kept.registry.codes).toHaveLength(3);
  });
  test("that tells of the same thing again is refused, with the line of the first", () => {
    const twice = rows(["E4", "OU", "high"], ["e4", "ou", "low"], ["E4", "IU", "other"]);
    expect(badOf(twice)).toContain("E4 OU stands on line 2 already".replace("E4 OU", "e4 ou"));
    expect(twice.registry.codes).toHaveLength(2);
  });
});

test("what is done is told every thousand rows", () => {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const rows = Array.from({ length: 2500 }, (_, at) => ({ line: at + 2, cells: [`E${at}`, "x"] }));
  const told: (readonly [number, number])[] = [];
  const head = { line: 1, cells: ["code", "meaning"] };
  importRows(opened.store, [head, ...rows], { progress: (done, of) => told.push([done, of]) });
  expect(told).toEqual([
    [1000, 2500],
    [2000, 2500],
  ]);
});

test("a file that is empty, or of no known kind, says what would be known", () => {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  expect(importRows(opened.store, [])).toBe("The file is empty.");
  const cells = ["x".repeat(50), ...Array.from({ length: 24 }, () => "y")];
  const said = importRows(opened.store, [{ line: 1, cells }]);
  expect(said).toContain(`${"x".repeat(40)}..., y`);
  expect(said).toContain("y, ....");
  expect(said).toContain("Known: ");
});
