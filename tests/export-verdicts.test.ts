import { describe, expect, test } from "vitest";
import type { Finding, JobReading, Judgement } from "../src/model.ts";
import { verdictsOf } from "../src/show/verdicts-of.ts";

const reading = (id: string, over: Partial<JobReading>): JobReading => ({
  id,
  message: id,
  quantity: "voltage",
  relation: "=",
  value: 471,
  unit: "V",
  figure: { number: "471", unit: "V" },
  said: "471",
  spans: [],
  assumed: [],
  rule: "test",
  taken: "2026-05-12T12:00:00Z",
  received: "2026-05-12T12:00:00Z",
  who: "bram",
  ...over,
});

const finding = (check: string, over: Partial<Finding>): Finding => ({
  about: "system",
  check,
  level: "good",
  says: check,
  values: {},
  basis: "common practice",
  ...over,
});

const judged = (...findings: readonly Finding[]): Judgement => ({
  findings,
  diagnosis: [],
  next: [],
  cautions: [],
});

function levels(
  readings: readonly JobReading[],
  judgement: Judgement,
  beforeWork?: { readonly at: string; readonly judgement: Judgement },
): readonly (string | undefined)[] {
  const verdicts = verdictsOf({
    job: { readings },
    judgement,
    ...(beforeWork === undefined ? {} : { beforeWork }),
  });
  return readings.map(({ id }) => verdicts.get(id)?.level);
}

describe("a verdict in a sheet", () => {
  const suction = { quantity: "pressure", unit: "Pa", at: "suction" } as const;

  test("of before the work is the one of then", () => {
    const readings = [
      reading("1", { ...suction, received: "2026-05-12T12:00:00Z" }),
      reading("2", { ...suction, received: "2026-05-12T14:00:00Z" }),
    ];
    const work = {
      at: "2026-05-12T13:00:00Z",
      judgement: judged(finding("superheat", { level: "bad" })),
    };
    expect(levels(readings, judged(finding("superheat", {})), work)).toEqual(["bad", "good"]);
  });

  test("stands on the last value of a place alone, but for holds", () => {
    const readings = ["1", "2"].map((id) => reading(id, suction));
    expect(levels(readings, judged(finding("superheat", {})))).toEqual([undefined, "good"]);
    const held = ["1", "2"].map((id) => reading(id, { quantity: "pressure", unit: "Pa" }));
    expect(levels(held, judged(finding("pressure_test", {})))).toEqual(["good", "good"]);
  });

  test("is the worst of several, but a set that names the figure is its own", () => {
    const amps = (id: string, number: string): JobReading =>
      reading(id, {
        quantity: "current",
        unit: "A",
        figure: { number, unit: "A" },
        state: "start",
      });
    const both = judged(
      finding("running_current", { says: "13.8, 14 and 13.7 A: within its plate" }),
      finding("running_current", { level: "bad", says: "40 A: overloaded" }),
    );
    expect(levels([amps("1", "40")], both)).toEqual(["bad"]);
    expect(levels([amps("1", "14.0")], both)).toEqual(["good"]);
    expect(levels([amps("1", "17")], both)).toEqual(["bad"]);
  });

  test.each([
    ["a box is no pipe of a hold", "pressure_test", { quantity: "temperature", at: "box" }],
    ["24 V is no supply", "supply", { value: 24 }],
    ["a bus is no supply", "supply", { kind: "dc" }],
    ["a compressor is no fan", "fan", { quantity: "current", subject: "compressor 1" }],
    ["doubted", "supply", { doubtful: true }],
    ["taken back", "supply", { undone: true }],
    ["replaced", "supply", { replaced_by: "9" }],
  ] as const)("is kept from what it was not made on: %s", (_, check, over) => {
    expect(levels([reading("1", over)], judged(finding(check, { level: "bad" })))).toEqual([
      undefined,
    ]);
  });

  test("of liquid is what condenses, of suction what boils", () => {
    const both = judged(
      finding("saturation", { says: "Boils at 12 F", level: "bad" }),
      finding("saturation", { says: "Condenses at 103 F" }),
    );
    const readings = [
      reading("1", suction),
      reading("2", { quantity: "pressure", at: "liquid" }),
      reading("3", { quantity: "temperature", at: "outdoor_air" }),
    ];
    expect(levels(readings, both)).toEqual(["bad", "good", undefined]);
  });
});
