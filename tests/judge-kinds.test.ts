import { describe, expect, it } from "vitest";
import type { EquipmentFacts } from "../src/model.ts";
import { judgedNotes, split } from "./support/judged-notes.ts";

/** Kinds of notes that were once misjudged, each with its siblings: what they must all lead to. */

const inverter: EquipmentFacts = {
  kind: "outdoor unit",
  drive: "inverter",
  phases: 3,
  supply_V: 460,
  rla_A: 22,
};
const rooftop: EquipmentFacts = {
  kind: "rooftop unit",
  drive: "line",
  phases: 3,
  supply_V: 208,
  rla_A: 24,
  lra_A: 140,
};

describe.each([
  ["128 psig 54 F, 365 psig 101 F"],
  ["365 psig, liquid 101 F. 128 psig, 54 F"],
  ["suction 128 / 54 F, then 365 psig with 101 F on the liquid"],
  ["128 psig 54 F / 365 psig 101 F"],
  ["54 F suction line at 128 psig, 365 psig and liquid 101 F"],
])("pressures that nobody named: %s", (note) => {
  it("stand at the side that their height tells, with their lines", () => {
    const values = Object.assign(
      {},
      ...judgedNotes(split, [note]).findings.map((one) => one.values),
    );
    expect(values.superheat_K).toBeGreaterThan(4.5);
    expect(values.superheat_K).toBeLessThan(7.5);
    expect(values.subcooling_K).toBeGreaterThan(3.4);
    expect(values.subcooling_K).toBeLessThan(6.8);
  });
});

describe.each([
  [["off three hours with the fan on, coil 72 F: 205 psig"]],
  [["550 psi nitrogen at 72 F, 548 psi this morning at 72 F"]],
  [["closed the king valve to pump down, stalls at 31 psig, head was 250"]],
])("pressures of a machine that does not run: %j", (notes) => {
  it("give no superheat", () => {
    const names = judgedNotes(split, notes).findings.flatMap((one) => Object.keys(one.values));
    expect(names).not.toContain("superheat_K");
  });
});

const first: readonly (readonly [
  kind: string,
  equipment: EquipmentFacts,
  fault: string,
  notes: readonly string[],
])[] = [
  [
    "swap",
    inverter,
    "drive_output_failed",
    [
      "comp 2 trips on overcurrent",
      "swapped the drives between comp 1 and comp 2 and the fault moved with the drive",
    ],
  ],
  [
    "swap",
    inverter,
    "drive_output_failed",
    ["overcurrent at start on A. exchanged inverter boards A and B, the trip went with the board"],
  ],
  [
    "swap",
    inverter,
    "compressor_rotor_locked",
    [
      "comp 1 overcurrent at start, traded modules with the sister, fault stayed with the compressor",
      "0.6 0.6 0.6 ohm, 900 meg",
    ],
  ],
  [
    "swap",
    inverter,
    "control_board_failed",
    ["outdoor fan stands still, moved it to the other unit and it runs there"],
  ],
  ["fuse", rooftop, "control_voltage_lost", ["3 A fuse on the board open, nothing across R and C"]],
  [
    "fuse",
    rooftop,
    "control_voltage_lost",
    ["5 amp fuse pops as soon as the thermostat wire is hooked up, 26 V at the secondary"],
  ],
  ["unloaded", rooftop, "other", ["breaker trips with nothing connected to it"]],
  ["unloaded", rooftop, "other", ["breaker kicks with the load wires off"]],
  [
    "welded",
    rooftop,
    "contactor_failed",
    ["stat satisfied, pulled the wires off the coil and the poles stay closed"],
  ],
  [
    "welded",
    rooftop,
    "contactor_failed",
    ["no voltage at the coil and it still keeps running, contacts are stuck shut"],
  ],
  [
    "two sides",
    rooftop,
    "supply_phase_lost",
    ["line side of the fuses 208 209 208, load side A-B 4, B-C 208, A-C 3"],
  ],
  [
    "two sides",
    rooftop,
    "supply_phase_lost",
    ["disconnect line side 208 209 208, load side A-B 208, B-C 2, A-C 5"],
  ],
  [
    "new one",
    rooftop,
    "compressor_winding_grounded",
    [
      "old compressor: 0.1 meg to ground all three",
      "new one is in, 2 gig each lead, 19.9 20.1 20.0 A",
    ],
  ],
  ["joint", rooftop, "connection_loose", ["L2 lug at the disconnect 188 F, the others 100"]],
  ["joint", rooftop, "connection_loose", ["4.4 V drop over the lug on L2, 0.1 on the rest"]],
  [
    "network",
    inverter,
    "communication_failed",
    ["indoors 5 to 9 dropped off the bus, 1 to 4 answer"],
  ],
];

describe.each(first)("%s, %o", (_kind, equipment, fault, notes) => {
  it(`leads to ${fault}: ${notes.join(" / ")}`, () => {
    expect(judgedNotes(equipment, notes).diagnosis[0]?.fault).toBe(fault);
  });
});

describe.each([
  ["added 10 kg, 180 days since the last addition", 20, 20.6],
  ["put 10 kg in, last time was 180 days ago", 20, 20.6],
  ["10 kg in today, a year to the day after the last", 9.9, 10.1],
] as const)("an addition: %s", (note, from, to) => {
  it("is reckoned over the days since the one before, and no clean bill", () => {
    const rack = {
      kind: "rack",
      refrigerant: "R-404A",
      charge_kg: 100,
      use: "commercial_refrigeration",
      leak_regime: "us_84",
    } as const;
    const judgement = judgedNotes(rack, [note]);
    const rate = judgement.findings.flatMap(
      (one) => one.values.leak_rate_percent_per_year ?? [],
    )[0];
    expect(rate).toBeGreaterThan(from);
    expect(rate).toBeLessThan(to);
    expect(judgement.diagnosis[0]?.fault).not.toBe("no_fault");
  });
});

describe.each([
  ["suction 120 psig, suction line 98 F. liquid 340 psig, liquid line 52 F"],
  ["suction 118 psig, suction line 96 F, liquid line 50 F, liquid pressure 335 psig"],
])("probes on each other's pipe: %s", (note) => {
  it("are questioned and not judged", () => {
    const { findings } = judgedNotes(split, [note]);
    expect(findings.some((one) => one.level === "unknown" && /exchanged/.test(one.says))).toBe(
      true,
    );
    expect(findings.flatMap((one) => Object.keys(one.values))).not.toContain("superheat_K");
  });
});
