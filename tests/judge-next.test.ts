import { describe, expect, it } from "vitest";
import { judge } from "../src/judge/judge.ts";
import type { CaseNote, EquipmentFacts } from "../src/model.ts";
import { amps, caseOf, megs, note, pairs, r, seen, volts } from "./case-builder.ts";

/** The order that a senior would choose, and why. */

const inverter: EquipmentFacts = { drive: "inverter", phases: 3, supply_V: 460, rla_A: 27 };
const line3: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 22, lra_A: 150 };
const line1: EquipmentFacts = { drive: "line", phases: 1, supply_V: 230, rla_A: 15, lra_A: 80 };

const nextOf = (facts: EquipmentFacts, ...notes: CaseNote[]) => judge(caseOf(facts, notes)).next;
const checksOf = (facts: EquipmentFacts, ...notes: CaseNote[]) =>
  nextOf(facts, ...notes).map((one) => one.check);

describe("the next check", () => {
  it("meggers after a tripped breaker before anything is energized again", () => {
    const asked = checksOf(line3, note("", seen("breaker_trips")));
    expect(asked[0]).toBe("insulation");
    expect(asked).not.toContain("start_current");
    expect(asked).not.toContain("running_current");
  });

  it("measures the capacitor of a humming single-phase motor: the commonest cause and five minutes", () => {
    expect(checksOf(line1, note("", seen("hums"), seen("overload_trips")))[0]).toBe("capacitor");
  });

  it("looks at supply and control of a dead unit, not at its compressor", () => {
    const asked = checksOf(line3, note("", seen("unit_dead")));
    expect(asked.slice(0, 2).sort()).toEqual(["control_voltage", "supply"]);
    expect(asked).not.toContain("insulation");
  });

  it("splits coil from control when a contactor stays out", () => {
    expect(checksOf(line3, note("", seen("contactor_not_pulling_in")))[0]).toBe("control_voltage");
  });

  it("follows a lost phase upstream", () => {
    const [first] = nextOf(line3, note("", volts([464, 228, 233])));
    expect(first?.why).toMatch(/upstream/);
  });

  it("rules out pressure, liquid and rotation before a rotor is called stuck", () => {
    const [first] = nextOf(
      inverter,
      note("", seen("kicks_without_turning"), amps([74], { state: "start" })),
      note("", pairs([0.51, 0.51, 0.51]), megs([9e8, 9e8, 9e8])),
      note("", seen("drive_fine_without_motor")),
    );
    expect(first?.why).toMatch(/pressures equal/);
  });

  it("asks for how long locked-rotor current held where that decides", () => {
    const [first] = nextOf(line3, note("", amps([148], { state: "start" })));
    expect(first?.why).toMatch(/how long/);
  });

  it("warms and repeats before a low winding is condemned", () => {
    const [first] = nextOf(line3, note("", megs([4e7, 4e7, 4e7])));
    expect(first?.why).toMatch(/heater on for hours/);
  });

  it("repeats a test whose leads disagree", () => {
    const [first] = nextOf(line3, note("", megs([1.4e7, 9e8, 9e8])));
    expect(first?.why).toMatch(/must agree/);
  });

  it("walks the pair of units that do not answer", () => {
    expect(checksOf(inverter, note("", seen("communication_lost")))[0]).toBe("communication");
  });

  it("lets a hot shell cool before its windings are judged", () => {
    const [first] = nextOf(
      line1,
      note("", seen("shell_hot"), r("winding_resistance", "OL", { points: ["C", "R"] })),
      note("", r("winding_resistance", "OL", { points: ["C", "S"] })),
      note("", r("winding_resistance", 3.1, { points: ["R", "S"] })),
    );
    expect(first?.why).toMatch(/cool/);
  });

  it("gives minutes and a sentence with each", () => {
    for (const one of nextOf(line3, note("here"))) {
      expect(one.minutes).toBeGreaterThan(0);
      expect(one.why.length).toBeGreaterThan(20);
    }
  });
});
