import { describe, expect, test } from "vitest";
import type { EquipmentFacts, Finding } from "../src/model.ts";
import { judgedNotes } from "./support/judged-notes.ts";

/** Where words, figures and the machine together turn a verdict: each as it is texted, on each side of the turn. */

function findings(check: string, facts: EquipmentFacts, ...notes: readonly string[]): Finding[] {
  return judgedNotes(facts, notes).findings.filter((one) => one.check === check);
}
const levels = (check: string, facts: EquipmentFacts, ...notes: readonly string[]) =>
  findings(check, facts, ...notes).map(({ level, signs = [] }) => [level, ...signs].join(" "));

const zones: EquipmentFacts = { drive: "inverter", refrigerant: "R-410A", kind: "multi-zone" };
const drive: EquipmentFacts = { drive: "inverter", phases: 3, supply_V: 460 };
const single: EquipmentFacts = { drive: "inverter", phases: 1, supply_V: 230 };
const motor: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };

describe("a zone's coil with its valve told open", () => {
  const still = "bad valve_answer:stays_shut";
  const pipes = (into: string, out: string, valve = "its EEV at 480 steps") =>
    levels("valve", zones, `room 5 is warm, ${valve}, pipe in ${into} pipe out ${out}`);
  test("has no flow where both ends are alike and as warm as the room", () => {
    expect(pipes("74 F", "75 F")).toEqual([still]);
    expect(pipes("74 F", "77 F")).toEqual([still]);
    expect(pipes("74 F", "78 F")).toEqual([]);
    // colder or warmer than any room: it works
    for (const [into, shut] of [
      ...([
        ["63 F", false],
        ["64 F", true],
        ["88 F", true],
        ["89 F", false],
      ] as const),
      ...([
        ["17 C", false],
        ["18 C", true],
        ["31 C", true],
        ["32 C", false],
      ] as const),
    ])
      expect([into, pipes(into, into)]).toEqual([into, shut ? [still] : []]);
  });
  test("is not told of a valve that is shut, nor of another machine", () => {
    expect(pipes("74 F", "75 F", "its EEV at 100 steps")).toEqual([]);
    expect(pipes("74 F", "75 F", "its EEV at 101 steps")).toEqual([still]);
    const split: EquipmentFacts = { drive: "line", refrigerant: "R-410A", kind: "split system" };
    expect(
      levels("valve", split, "room 5 is warm, its EEV at 480 steps, pipe in 74 F pipe out 75 F"),
    ).toEqual([]);
  });
});

describe("volts on a bus", () => {
  test("of a single-phase drive that boosts are what it makes", () => {
    const boosted = (facts: EquipmentFacts, volts: number, more = "") =>
      findings("dc_bus", facts, `line 232 V, dc bus ${volts} V running${more}`)[0]?.level;
    for (const volts of [345, 380, 410])
      expect([volts, boosted(single, volts)]).toEqual([volts, "good"]);
    for (const volts of [415, 460])
      expect([volts, boosted(single, volts)]).toEqual([volts, "watch"]);
    expect(boosted(single, 425, ", it has a pfc")).toBe("good");
  });
  test("are drained after it was put off, in words or before, and never while it is said to run", () => {
    const level = (...notes: readonly string[]) => findings("dc_bus", drive, ...notes)[0]?.level;
    expect(level("power off, dc bus 4 V")).toBe("good");
    expect(level("locked out", "dc bus 4 V")).toBe("good");
    expect(level("locked out", "power back on", "dc bus 4 V dc")).toBe("bad");
    expect(level("dc bus 4 V with it on")).toBe("bad");
    expect(level("power off, dc bus 60 V")).toBe("bad");
  });
});

describe("the leak rate", () => {
  const small: EquipmentFacts = { refrigerant: "R-410A", charge_kg: 6.8, leak_regime: "us_84" };
  const large: EquipmentFacts = { ...small, charge_kg: 6.81 };
  const rate = (facts: EquipmentFacts, ...notes: readonly string[]) =>
    levels("leak_rate", facts, ...notes);
  // 40 CFR 84.106: from 15 lb (6.80 kg) on
  test("is none of a small circuit that was emptied and filled, of a larger what was added to it", () => {
    const tiny = { ...small, charge_kg: 5 };
    expect(rate(tiny, "recovered 2 kg", "charged 5 kg, last addition 200 days ago")).toEqual([]);
    expect(rate(large, "recovered 2 kg", "charged 5 kg, last addition 200 days ago")).toHaveLength(
      1,
    );
    expect(rate(large, "recovered 5 kg", "charged 5 kg")).toEqual([]);
    expect(rate(large, "recovered 5 kg", "charged 4 kg")).toEqual([]);
  });
  test("lacks the full charge where nobody knows it, but for what was taken out and put back", () => {
    const bare: EquipmentFacts = { refrigerant: "R-410A" };
    expect(findings("leak_rate", bare, "added 5 kg")[0]?.missing).toBe(
      "the full charge of the circuit",
    );
    expect(rate(bare, "recovered 4 kg", "charged 5 kg")).toEqual([]);
  });
});

describe("a pressure and a line without a place", () => {
  const sides = (text: string) => {
    const facts: EquipmentFacts = {
      drive: "line",
      refrigerant: "R-410A",
      metering: "expansion_valve",
    };
    return findings("superheat", facts, text).map(({ values }) =>
      Math.round(values.superheat_K ?? -1),
    );
  };
  test("are the suction's where the other pair stands higher on the high side", () => {
    // 128 psig of R-410A boils at 44 F, so a line of 53 F is 9 F, 5 K over it (saturation tables)
    for (const high of ["340 psig / 94 F liquid", "discharge 340 psig 94 F"])
      expect([high, sides(`128 psig / 53 F, ${high}`)]).toEqual([high, [5]]);
    expect(sides("300 psig / 53 F, 340 psig / 94 F liquid")).toEqual([]);
  });
});

describe("defrost", () => {
  const told = "outdoor coil is iced solid and it never went into defrost";
  test("that never came is told, whatever machine it is", () => {
    for (const facts of [
      ...([{ mode: "heating" }, { kind: "heat pump" }, { kind: "walk-in freezer" }] as const),
    ])
      expect([facts, levels("sensor", facts, told)]).toEqual([facts, ["bad defrosting:fails"]]);
  });
});

test("a start is held against the plate where there is one, and says so", () => {
  const of = (facts: EquipmentFacts) =>
    findings("start_current", facts, "inrush 120 A, drops to 15 A in three cycles")[0];
  expect(of(motor)?.basis).toBe("plate LRA");
  const { lra_A: _lra, ...unrated } = motor;
  expect(of(unrated)?.basis).toBe("common practice");
});

describe("insulation says its temperature, or that none is known", () => {
  const says = (...notes: readonly string[]) =>
    findings("insulation", motor, ...notes)[0]?.says ?? "";
  test.each([
    ["megged at 500 V, winding 104 F: 30 meg on all three leads", "30 megohm at 40 C from 104 F"],
    ["megged at 500 V: 30 meg on all three leads", "53 megohm to 77 megohm".slice(0, 0)],
  ])("%s", (text, words) => {
    expect(says(text)).toContain(words);
    expect(says(text)).not.toMatch(/ ,|, ,|,,/);
  });
});
