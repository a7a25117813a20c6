import { describe, expect, test } from "vitest";
import type { LimitFacts } from "../src/model.ts";
import { importRows } from "../src/record/import/import-rows.ts";
import { canonical, plainUnit, temperature } from "../src/record/import/kinds/limit-units.ts";
import { readRegistry } from "../src/record/registry.ts";
import { openStore } from "../src/record/store.ts";

/** Each limit that a company may set: its names, its units, its sides, and what is refused. */

function imported(...rows: readonly (readonly string[])[]) {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const result = importRows(
    opened.store,
    rows.map((cells, at) => ({ line: at + 1, cells: [...cells] })),
  );
  if (typeof result === "string") throw new Error(result);
  return { ...result, limits: readRegistry(opened.store).limits };
}
const value = (name: string, cell: string) => imported(["limit", "value"], [name, cell]);
const sides = (name: string, least: string, most: string) =>
  imported(["limit", "minimum", "maximum"], [name, least, most]);
const reasonOf = ({ bad }: { readonly bad: readonly { readonly reason: string }[] }) =>
  bad[0]?.reason ?? "";

/** A name people use, a figure with its unit, and what it is in the canonical unit on the side it means. */
const told: readonly (readonly [string, string, LimitFacts])[] = [
  ["voltage unbalance", "2 %", { limit: "voltage_unbalance", most: 2 }],
  ["imbalance of volts", "2", { limit: "voltage_unbalance", most: 2 }],
  ["amp unbalance", "10 percent", { limit: "current_unbalance", most: 10 }],
  ["winding difference", "5 pct", { limit: "winding_unbalance", most: 5 }],
  ["insulation clean", "100 megohm", { limit: "insulation_clean", least: 1e8 }],
  ["megger", "5", { limit: "insulation", least: 5e6 }],
  ["insulation", "1 gig", { limit: "insulation", least: 1e9 }],
  ["capacitor", "6 %", { limit: "capacitance_error", most: 6 }],
  ["voltage off plate", "10 %", { limit: "voltage_off_plate", most: 10 }],
  ["vacuum", "500", { limit: "vacuum_hold", most: 66.661 }],
  ["vacuum hold", "0.5 torr", { limit: "vacuum_hold", most: 66.661 }],
  ["compression ratio", "<= 11", { limit: "compression_ratio", most: 11 }],
  ["discharge", "225 F", { limit: "discharge_temperature", most: 107.222222222 }],
  ["discharge", "107 C", { limit: "discharge_temperature", most: 107 }],
  ["static", "0.8 in wc", { limit: "static_pressure", most: 199.2712 }],
  ["static", "200 Pa", { limit: "static_pressure", most: 200 }],
  ["leak rate", "20 %", { limit: "leak_rate", most: 20 }],
  ["walk in cooler", "41 F", { limit: "box_temperature", most: 5 }],
  // both sides are usual: the words, the mark or two numbers tell which
  ["minimum superheat", "8 F", { limit: "superheat", least: 4.44444444444 }],
  ["superheat", ">= 5 K", { limit: "superheat", least: 5 }],
  ["highest subcooling", "10 C", { limit: "subcooling", most: 10 }],
  ["subcooling", "4 to 10 K", { limit: "subcooling", least: 4, most: 10 }],
  [
    "delta t",
    "14 - 24 F",
    { limit: "temperature_split", least: 7.77777777778, most: 13.3333333333 },
  ],
  ["maximum insulation", "5 gig", { limit: "insulation", most: 5e9 }],
];

describe("a figure alone", () => {
  test.each(told)("%s: %s", (name, cell, limit) => {
    const { limits, bad } = value(name, cell);
    expect(bad).toEqual([]);
    expect(limits).toEqual([limit]);
  });
  test.each([
    ["superheat", "8 F", 'superheat 8 could be the least or the most; say "minimum"'],
    ["superheat", ">= 8", "superheat 8 has no unit; write F, C or K"],
    ["superheat", "5 to 8", "superheat 5 has no unit"],
    ["superheat", "5 to 90 K", "superheat 90 K is no limit"],
    ["superheat", "-5 to 8 K", "superheat -5 K is no limit"],
    ["capacitor", "6 volts", '"volts" is no unit of capacitance error; write %'],
    ["capacitor", "six", '"six" is no number'],
    ["superheat", "1.2.3 to 5 K", "1.2.3"],
    ["superheat", "1 to 5.6.7 K", "5.6.7"],
    ["elevator speed", "6", '"elevator speed" is not known; write one of: voltage unbalance'],
    ["subcooling", "8 to 4 K", "the minimum is not under the maximum"],
    ["subcooling", "4 to 4 K", "the minimum is not under the maximum"],
  ])("is refused: %s %s", (name, cell, why) => {
    const { limits, ...result } = value(name, cell);
    expect(limits).toEqual([]);
    expect(reasonOf(result)).toContain(why);
  });
});

describe("a minimum and a maximum", () => {
  test("stand in their own columns, with a unit of their own, of the heading or of a column", () => {
    const both = [{ limit: "superheat", least: 5, most: 10 }];
    expect(sides("superheat", "5 K", "10 K").limits).toEqual(both);
    expect(imported(["limit", "min (K)", "max (K)"], ["superheat", "5", "10"]).limits).toEqual(
      both,
    );
    expect(imported(["limit", "min", "max", "unit"], ["superheat", "5", "10", "K"]).limits).toEqual(
      both,
    );
    expect(sides("superheat", "", "10 K").limits).toEqual([{ limit: "superheat", most: 10 }]);
    expect(sides("superheat", "5 K", "").limits).toEqual([{ limit: "superheat", least: 5 }]);
  });
  test.each([
    ["superheat", "", "", "no figure; fill in a minimum or a maximum"],
    ["superheat", "5 to 6 K", "", "minimum: two numbers stand there"],
    ["superheat", "", "5 to 6 K", "maximum: two numbers stand there"],
    ["superheat", "5", "", "minimum: superheat 5 has no unit"],
    ["superheat", "5 K", "99 K", "maximum: superheat 99 K is no limit"],
    ["superheat", "10 K", "5 K", "the minimum is not under the maximum"],
  ])("are refused: %s %s %s", (name, least, most, why) => {
    const { limits, ...result } = sides(name, least, most);
    expect(limits).toEqual([]);
    expect(reasonOf(result)).toContain(why);
  });
  test("that stand on two lines are one limit, and the same side twice is refused", () => {
    const heads = ["limit", "minimum", "maximum", "equipment"];
    const { limits, counts } = imported(
      ...[heads, ["superheat", "5 K", "", "OU-3"], ["superheat", "", "10 K", "OU-3"]],
    );
    expect(counts.added).toBe(1);
    expect(limits).toEqual([{ limit: "superheat", equipment: "OU-3", least: 5, most: 10 }]);
    const twice = imported(...[heads, ["superheat", "5 K", "", ""], ["super heat", "6 K", "", ""]]);
    expect(reasonOf(twice)).toContain("stands on line 2 already");
  });
});

test("both ends of what anybody would set are taken, what lies beyond is not", () => {
  for (const [name, unit, from, to] of [
    ["superheat most", "K", 0, 60],
    ["compression ratio most", "", 1, 30],
    ["discharge", "C", 40, 180],
    ["vacuum", "pa", 1, 700],
    ["insulation", "ohm", 1e5, 1e12],
  ] as const) {
    for (const inside of [from, to]) expect(value(name, `${inside} ${unit}`).bad).toEqual([]);
    for (const outside of [from * 0.9 - 0.01, to * 1.01])
      expect(value(name, `${outside} ${unit}`).bad).toHaveLength(1);
  }
});

test("a unit is the same however it is set; one of another kind is none", () => {
  for (const [said, plain] of [
    ...[
      ["°F", "f"],
      ["MΩ", "mohm"],
      ["in. W.C.", "in wc"],
      ["µm", "um"],
      ["Degrees  F", "deg f"],
    ],
    ...[
      ["in h2 o", "in h2o"],
      [" K ", "k"],
    ],
  ])
    expect(plainUnit(said ?? "")).toBe(plain);
  expect(canonical(212, "°F", temperature)).toBe(100);
  expect(canonical(-40, "F", temperature)).toBe(-40);
  expect(canonical(20, "psi", temperature)).toBeUndefined();
  expect(canonical(20, "", temperature)).toBeUndefined();
});
