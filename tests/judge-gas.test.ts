import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { judge } from "../src/judge/judge.ts";
import type { Judgement } from "../src/model.ts";
import { caseOf } from "./gas-case.ts";

/** Cases of the refrigerant and air side with readings by hand, so that reading plays no part. */
const line = z.object({
  id: z.string(),
  equipment: z.record(z.string(), z.unknown()),
  site: z.record(z.string(), z.unknown()).optional(),
  notes: z.array(
    z.object({
      text: z.string(),
      readings: z.array(z.string()),
      said: z.array(z.string()),
    }),
  ),
  expect: z.strictObject({
    top: z.string().optional(),
    top_any: z.array(z.string()).optional(),
    top_below: z.number().optional(),
    not_top: z.array(z.string()).optional(),
    levels: z.record(z.string(), z.string()).optional(),
    values: z.record(z.string(), z.tuple([z.number(), z.number()])).optional(),
    no_values: z.array(z.string()).optional(),
    next_any: z.array(z.string()).optional(),
    abouts: z.array(z.string()).optional(),
  }),
});
type Line = z.infer<typeof line>;

const cases = readFileSync(new URL("../fixtures/cases/gas-by-hand.jsonl", import.meta.url), "utf8")
  .trim()
  .split("\n")
  .map((text) => line.parse(JSON.parse(text)));

function expectDiagnosis({ expect: wanted }: Line, judged: Judgement): void {
  const top = judged.diagnosis[0];
  if (wanted.top !== undefined) expect(top?.fault).toBe(wanted.top);
  if (wanted.top_any !== undefined) expect(wanted.top_any).toContain(top?.fault);
  if (wanted.not_top !== undefined) expect(wanted.not_top).not.toContain(top?.fault);
  if (wanted.top_below !== undefined) expect(top?.probability ?? 0).toBeLessThan(wanted.top_below);
  if (wanted.next_any !== undefined) {
    const next = judged.next.map((one) => `${one.check} ${one.why}`.toLowerCase()).join("\n");
    expect(wanted.next_any.some((word) => next.includes(word))).toBe(true);
  }
}

function expectFindings({ expect: wanted }: Line, judged: Judgement): void {
  for (const [check, level] of Object.entries(wanted.levels ?? {}))
    expect(judged.findings.filter((one) => one.check === check).map((one) => one.level)).toContain(
      level,
    );
  for (const [name, [low, high]] of Object.entries(wanted.values ?? {})) {
    const values = judged.findings.flatMap((one) => one.values[name] ?? []);
    expect(
      values.some((one) => one >= low && one <= high),
      `${name} ${values}`,
    ).toBe(true);
  }
  for (const about of wanted.abouts ?? [])
    expect(judged.findings.map((one) => one.about)).toContain(about);
  for (const name of wanted.no_values ?? [])
    expect(
      judged.findings.some((one) => name in one.values),
      name,
    ).toBe(false);
}

describe("judging the refrigerant and air side", () => {
  for (const one of cases)
    it(`judges ${one.id}`, () => {
      const judged = judge(caseOf(one.equipment, one.notes, one.site));
      expectDiagnosis(one, judged);
      expectFindings(one, judged);
    });

  it("says every finding in plain letters with a basis, and names what is missing where it can't judge", () => {
    for (const one of cases)
      for (const finding of judge(caseOf(one.equipment, one.notes, one.site)).findings) {
        expect(finding.says).toMatch(/^[\w\s.,:;'%/()"-]+$/);
        expect(finding.basis.split(" ").length).toBeLessThanOrEqual(5);
        if (finding.level === "unknown") expect(finding.missing ?? "").not.toBe("");
        expect(Object.values(finding.values).every(Number.isFinite)).toBe(true);
      }
  });

  it("never tells people that something is safe, normal, compliant or certain", () => {
    for (const one of cases) {
      const judged = judge(caseOf(one.equipment, one.notes, one.site));
      const said = [
        ...judged.findings.map((each) => each.says),
        ...judged.next.map((each) => each.why),
      ];
      for (const text of said) expect(text).not.toMatch(/\b(safe|normal|compliant|certainly)\b/i);
    }
  });

  it("gives probabilities that sum to one", () => {
    for (const one of cases) {
      const { diagnosis } = judge(caseOf(one.equipment, one.notes, one.site));
      const sum = diagnosis.reduce((all, each) => all + each.probability, 0);
      if (diagnosis.length > 0) expect(sum).toBeCloseTo(1, 9);
    }
  });

  it.each([
    "filters are not dirty, coil clean",
    "head won't drop below 420",
    "tag says 230 V but reads 208",
    "economizer stuck open",
    "condenser is spotless, washed it in may",
    "no change after ten minutes at 500 microns",
    "vacuum pump won't pull below 2500 microns",
    "bulb is strapped and insulated, shut it off for lunch",
    "filter drier changed last week",
    "topped off with 22 oz",
    "box 38, liquid solenoid opens and closes fine",
  ])("hears nothing wrong in: %s", (text) => {
    const { findings } = judge(caseOf({ kind: "walk-in cooler", drive: "line" }, [{ text }]));
    expect(findings.filter((one) => one.level === "bad" || one.level === "watch")).toEqual([]);
  });

  it("no longer calls a blocked filter bad once a new one is in", () => {
    const notes = [{ text: "filters look like felt" }, { text: "new filters in" }];
    const kind = { kind: "rooftop unit", drive: "line" as const };
    expect(judge(caseOf(kind, notes.slice(0, 1))).findings.map((one) => one.level)).toContain(
      "bad",
    );
    expect(judge(caseOf(kind, notes)).findings.map((one) => one.level)).toEqual(["good"]);
  });
});
