import { describe, expect, it } from "vitest";
import type { EquipmentFacts } from "../src/model.ts";
import { judgedNotes } from "./support/judged-notes.ts";

/** Sound machines, told in many ways and in any order: nothing is called bad, nothing is found wrong. */

interface Told {
  readonly equipment: EquipmentFacts;
  readonly first: readonly string[];
  readonly second: readonly string[];
}

// R-407C: 66 psig boils at 42 F (dew), 260 psig condenses at 110 F (bubble) by the saturation tables
const air: Told = {
  equipment: {
    kind: "rooftop unit",
    drive: "line",
    refrigerant: "R-407C",
    metering: "expansion_valve",
    mode: "cooling",
  },
  first: ["RA 73 SA 56", "73 in 56 out", "split is 17, filters clean", "return 73 supply 56"],
  second: [
    "LP 66 HP 260 ST 51 LT 103 OAT 95",
    "lp 66, hp 260, suction line 51, liquid line 103, its 95 out",
    "suction 66 at 51, liquid 260 at 103, 95 outside",
    "low side 66 psi, line 51F. high side 260 psi, line 103F. ambient 95",
  ],
};

const line: Told = {
  equipment: {
    kind: "rooftop unit",
    drive: "line",
    phases: 3,
    supply_V: 460,
    rla_A: 24,
    lra_A: 144,
  },
  first: [
    "volts 474/475/473 amps 19.2/19.4/19.0",
    "running amps T1 19.2 T2 19.4 T3 19.0, supply 474",
    "pulling 19.2, 19.4 and 19.0 with 474 volts on all three",
  ],
  second: [
    "contactor pulls in clean, 0.1 V drop across the contacts",
    "lra 144, saw 132 on the clamp for half a second",
    "leads off: 0.84 ohm across all, 950 megohm to shell",
    "R to C 26.3",
  ],
};

const drive: Told = {
  equipment: { kind: "outdoor unit", drive: "inverter", phases: 3, supply_V: 208, rla_A: 30 },
  first: [
    "dc bus reads 294 V, 210 in on all three",
    "bus 294 with line 210 211 209",
    "P-N 294 vdc, L1-L2 210 L2-L3 210 L1-L3 211",
  ],
  second: [
    "ramps up to 22.5 over 40 seconds",
    "draws 22.5 at 60 hz",
    "diode test 0.38 0.39 0.38 both banks",
    "comm pair 15.8 V dc at the outdoor and 15.6 at the last indoor",
  ],
};

const cases = [air, line, drive].flatMap(({ equipment, first, second }) =>
  first.flatMap((one) =>
    second.flatMap((other) => [
      { equipment, notes: [one, other] },
      { equipment, notes: [other, one] },
    ]),
  ),
);

describe("a sound machine", () => {
  it.each(cases)("is called sound: $notes", ({ equipment, notes }) => {
    const { findings, diagnosis } = judgedNotes(equipment, notes);
    expect(findings.filter((one) => one.level === "bad").map((one) => one.says)).toEqual([]);
    expect(diagnosis[0]?.fault).toBe("no_fault");
  });
});
