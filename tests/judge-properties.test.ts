import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { diagnose } from "../src/judge/diagnose.ts";
import { judge } from "../src/judge/judge.ts";
import { sceneOf } from "../src/judge/scene.ts";
import { signGroups } from "../src/judge/signs/list.ts";
import type { CaseNote, EquipmentFacts, Judgement } from "../src/model.ts";
import { amps, caseOf, did, megs, note, type Part, pairs, r, seen, volts } from "./case-builder.ts";

const facts: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };

const ohms = fc.double({ min: 1e3, max: 9e9, noNaN: true });
const part: fc.Arbitrary<readonly Part[]> = fc.oneof(
  ohms.map((ohm) => megs([ohm, ohm, ohm])),
  fc.double({ min: 0.05, max: 9, noNaN: true }).map((ohm) => pairs([ohm, ohm, ohm])),
  fc.constant(pairs(["OL", "OL", 0.7])),
  fc.double({ min: 0, max: 700, noNaN: true }).map((one) => volts([one, 460, 461])),
  fc
    .double({ min: 0, max: 60, noNaN: true })
    .map((one) => amps([one, one, one], { state: "running" })),
  fc
    .record({
      peak: fc.double({ min: 1, max: 300, noNaN: true }),
      held: fc.double({ min: 0.1, max: 9, noNaN: true }),
    })
    .map(({ peak, held }) => amps([peak], { state: "start", stat: "peak", for_s: held })),
  fc
    .constantFrom("hums", "breaker_trips", "burnt_smell", "oil_black", "shell_hot", "runs_normally")
    .map((name) => [seen(name)]),
);
const notes = fc.array(
  part.map((parts) => note("", parts)),
  { minLength: 1, maxLength: 6 },
);

const chances = (judged: Judgement) =>
  new Map(judged.diagnosis.map((one) => [one.fault, one.probability]));

function expectSame(a: Judgement, b: Judgement): void {
  expect(a.diagnosis[0]?.fault).toBe(b.diagnosis[0]?.fault);
  for (const [fault, chance] of chances(a)) expect(chances(b).get(fault)).toBeCloseTo(chance, 9);
  const levels = (one: Judgement) =>
    one.findings.map((f) => `${f.about} ${f.check} ${f.level}`).sort();
  expect(levels(a)).toEqual(levels(b));
}

describe("judging", () => {
  it("gives probabilities that sum to 1, in order, whatever is measured", () => {
    fc.assert(
      fc.property(notes, (given) => {
        const { diagnosis } = judge(caseOf(facts, given));
        expect(diagnosis.reduce((sum, one) => sum + one.probability, 0)).toBeCloseTo(1, 9);
        for (const [at, one] of diagnosis.entries())
          expect(one.probability).toBeLessThanOrEqual(diagnosis[at - 1]?.probability ?? 1);
      }),
    );
  });

  it("never lowers a fault by more of the same evidence", () => {
    fc.assert(
      fc.property(notes, fc.nat(), (given, at) => {
        const again = given[at % given.length] ?? note("");
        const once = chances(judge(caseOf(facts, given)));
        const twice = chances(judge(caseOf(facts, [...given, again])));
        for (const [fault, chance] of once)
          expect(twice.get(fault)).toBeGreaterThanOrEqual(chance - 1e-9);
      }),
    );
  });

  it("raises the odds of a fault, against any that the sign leaves alone, by a sign that speaks for it", () => {
    const signs = [...signGroups.values()].flatMap(({ group, background }) =>
      Object.keys(background).map((outcome) => ({ sign: `${group}:${outcome}`, says: "" })),
    );
    const scene = sceneOf(caseOf({}, []));
    fc.assert(
      fc.property(fc.subarray(signs, { maxLength: 5 }), fc.constantFrom(...signs), (held, more) => {
        const before = new Map(diagnose(held, scene).map((one) => [one.fault, one.probability]));
        const alone = diagnose([more], scene);
        const prior = new Map(diagnose([], scene).map((one) => [one.fault, one.probability]));
        const grown = (fault: (typeof alone)[number]) =>
          fault.probability / (prior.get(fault.fault) ?? 1);
        const other = alone.find((one) => one.fault === "other");
        if (other === undefined) return;
        const after = new Map(
          diagnose([...held, more], scene).map((one) => [one.fault, one.probability]),
        );
        for (const one of alone.filter((fault) => grown(fault) > grown(other) * 1.0001)) {
          const odds = (chance: Map<string, number>) =>
            (chance.get(one.fault) ?? 0) / (chance.get("other") ?? 1);
          expect(odds(after)).toBeGreaterThanOrEqual(odds(before) * (1 - 1e-9));
        }
      }),
    );
  });

  it("says the same whatever the order of notes between two actions", () => {
    fc.assert(
      fc.property(notes, notes, fc.integer(), (before, after, turn) => {
        const repair = note("", did("replaced", "contactor"));
        const turned = (list: readonly CaseNote[]) => {
          const by = Math.abs(turn) % list.length;
          return [...list.slice(by), ...list.slice(0, by)];
        };
        const straight = judge(caseOf(facts, [...before, repair, ...after]));
        const shuffled = judge(caseOf(facts, [...turned(before), repair, ...turned(after)]));
        expectSame(straight, shuffled);
      }),
    );
  });

  it("does not clear the cause by what is read after the repair", () => {
    const grounded = [note("", seen("breaker_trips")), note("", megs([4e4, 4e4, 4e4]))];
    const before = judge(caseOf(facts, grounded));
    const after = judge(
      caseOf(facts, [
        ...grounded,
        note("", did("replaced", "compressor")),
        note("", megs([9e8, 9e8, 9e8]), amps([15, 15.1, 15], { state: "running" })),
      ]),
    );
    expect(after.diagnosis[0]?.fault).toBe("compressor_winding_grounded");
    expect(after.diagnosis[0]?.probability).toBeCloseTo(before.diagnosis[0]?.probability ?? 0, 6);
    expect(after.findings.filter((one) => one.level === "bad")).toEqual([]);
  });

  it("lets a repair that changed nothing speak against the part, and what is read later count", () => {
    const single: EquipmentFacts = {
      drive: "line",
      phases: 1,
      supply_V: 230,
      rla_A: 16,
      lra_A: 92,
    };
    const stalled = note("", seen("hums"), amps([90], { state: "start", for_s: 5 }));
    const fix = did("replaced", "capacitor");
    const cured = judge(caseOf(single, [stalled, note("", fix)]));
    const inVain = judge(
      caseOf(single, [
        stalled,
        note("", fix, seen("no_change")),
        note("", seen("pressures_equal")),
      ]),
    );
    expect(cured.diagnosis[0]?.fault).toBe("capacitor_failed");
    expect(inVain.diagnosis[0]?.fault).toBe("compressor_rotor_locked");
  });

  it("says the same whether a bound or a number was typed in another unit of the same size", () => {
    const asMeg = judge(
      caseOf(facts, [
        note("", megs([84e6, 84e6, 84e6], { figure: { number: "84", unit: "megohm" } })),
      ]),
    );
    const asKilo = judge(
      caseOf(facts, [
        note("", megs([84e6, 84e6, 84e6], { figure: { number: "84000", unit: "kilohm" } })),
      ]),
    );
    expectSame(asMeg, asKilo);
  });

  it("gives unknown and no figure where a reading is missing", () => {
    const judged = judge(
      caseOf({ drive: "line", phases: 3 }, [
        note(
          "",
          amps([112], { state: "start", stat: "peak" }),
          amps([12, 12, 12], { state: "running" }),
        ),
      ]),
    );
    for (const one of judged.findings) {
      expect(one.level).toBe("unknown");
      expect(one.values).not.toHaveProperty("expected_locked_rotor_A");
      expect(one.missing).not.toBe(undefined);
    }
    expect(judged.findings.length).toBeGreaterThan(0);
  });

  it("makes no figure that is no number, whatever is measured", () => {
    fc.assert(
      fc.property(notes, (given) => {
        for (const one of judge(caseOf(facts, given)).findings)
          for (const value of Object.values(one.values)) expect(Number.isFinite(value)).toBe(true);
      }),
    );
  });

  it("leaves no suspect above 0.6 where the evidence contradicts itself", () => {
    const torn = judge(
      caseOf(facts, [
        note("", megs([3e4, 3e4, 3e4])),
        note("", amps([15, 15.1, 14.9], { state: "running" }), seen("runs_normally")),
      ]),
    );
    expect(torn.diagnosis[0]?.probability).toBeLessThan(0.6);
    const leads = judge(caseOf(facts, [note("", megs([2e4, 8e8, 9e8]))]));
    expect(leads.diagnosis[0]?.probability).toBeLessThan(0.6);
  });

  it("has nothing to say of a case where nothing was measured or observed", () => {
    expect(judge(caseOf(facts, [note("on my way")])).diagnosis).toEqual([]);
    expect(judge(caseOf(facts, [])).diagnosis).toEqual([]);
    expect(judge(caseOf(facts, [note("", r("current", 20, { rating: "RLA" }))])).diagnosis).toEqual(
      [],
    );
  });

  it("never asks next for what was just told", () => {
    const told = judge(
      caseOf(facts, [
        note("", volts([460, 461, 459]), megs([8e8, 8e8, 8e8]), pairs([0.6, 0.6, 0.6])),
      ]),
    );
    const asked = told.next.map((one) => one.check);
    for (const check of ["insulation", "winding", "supply"]) expect(asked).not.toContain(check);
    expect(asked.length).toBeGreaterThan(0);
  });
});
