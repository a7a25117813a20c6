import { expect, test } from "vitest";
import type { EquipmentFacts, Finding } from "../src/model.ts";
import { judgedNotes, split } from "./support/judged-notes.ts";

/** What stands now is told apart from what stood, and what was said from what was read. */

const rooftop: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };
const judged = (equipment: EquipmentFacts, ...notes: readonly string[]) =>
  judgedNotes(equipment, notes);
const of = (findings: readonly Finding[], check: string) =>
  findings.filter((one) => one.check === check);

test("a pressure read after the repair makes no superheat with the line read before it", () => {
  const { findings, diagnosis } = judged(
    split,
    "suction 88 psig line 68 F",
    "brazed the leak and added 3 lb",
    "suction 121 psig, head 338 psig",
  );
  expect(of(findings, "superheat")).toEqual([]);
  expect(diagnosis[0]?.fault).toBe("refrigerant_undercharge");
});

test("superheat told after the repair leaves nothing of the old suction pressure standing", () => {
  const { findings } = judged(
    split,
    "suction 88 psig line 68 F",
    "added 3 lb",
    "superheat came down to 12 F",
  );
  expect(of(findings, "superheat").map((one) => one.level)).toEqual(["good"]);
  expect(of(findings, "saturation").filter((one) => one.level !== "good")).toEqual([]);
});

test("superheat and subcooling told before the work are past once gauges are read after it", () => {
  const { findings, diagnosis } = judged(
    split,
    "suction 62 head 210 psig superheat 31 F subcooling 2 F",
    "recovered 3 lb 4, tag 8 lb 8",
    "charged 8 lb 8 oz",
    "suction 118 head 340 psig",
  );
  expect(of(findings, "superheat").concat(of(findings, "subcooling"))).toEqual([]);
  expect(diagnosis[0]?.fault).toBe("refrigerant_undercharge");
});

test("subcooling said otherwise than its pressure and line give is asked about, not judged", () => {
  // R-410A at 365 psig: bubble point 110 F by the saturation tables, so 17 F over a line of 93 F
  const asked = of(
    judged(split, "head 365 psig liquid 93 F, subcooling 4 F").findings,
    "subcooling",
  );
  expect(asked.map((one) => one.level)).toEqual(["unknown"]);
  expect(asked[0]?.says).toContain("4 F of subcooling was said");
  expect(asked[0]?.values.subcooling_K).toBeCloseTo(9.3, 1);
  const agreed = of(
    judged(split, "head 365 psig liquid 93 F, subcooling 16 F").findings,
    "subcooling",
  );
  expect(agreed.map((one) => one.level)).toEqual(["good"]);
  expect(agreed[0]?.says).not.toContain("was said");
});

test("superheat said otherwise, with the same verdict, is named beside it", () => {
  const [one] = of(
    judged(split, "suction 118 psig line 50 F, superheat 22 F").findings,
    "superheat",
  );
  expect(one?.level).toBe("good");
  expect(one?.says).toContain("22 F was said with it");
});

test("a split that no target holds for is not judged good", () => {
  const heating: EquipmentFacts = { drive: "line", refrigerant: "R-410A", mode: "heating" };
  const found = of(judged(heating, "return 70 F, supply 98 F").findings, "temperature_split");
  expect(found.map((one) => one.level)).toEqual(["unknown"]);
});

test("a phase that was lost and is back stands as the cause, not as what is bad now", () => {
  const { findings, diagnosis } = judged(
    rooftop,
    "A-B 478 V, B-C 231 V, A-C 240 V behind the fuses",
    "new fuses are in, now A-B 478 V, B-C 479 V, A-C 480 V",
  );
  expect(of(findings, "supply").filter((one) => one.level === "bad")).toEqual([]);
  expect(diagnosis[0]?.fault).toBe("supply_phase_lost");
});

test("a supply that is whole at the panel leaves the dead disconnect dead", () => {
  const { findings } = judged(
    rooftop,
    "at the disconnect L1-L2 0 V, L2-L3 0 V, L1-L3 0 V",
    "at the panel L1-L2 478 V, L2-L3 479 V, L1-L3 480 V",
  );
  expect(of(findings, "supply").some((one) => one.level === "bad")).toBe(true);
});

test("what it stood at before the start counts, not the plate", () => {
  // 392 of 468 is 84 percent, of the plate's 460 it would be 85
  const dip = of(
    judged(rooftop, "line voltage dropped from 468 to 392 V at start").findings,
    "supply",
  );
  expect(dip.map((one) => one.level)).toEqual(["bad"]);
  expect(dip[0]?.says).toContain("468 V falls to 392 V");
  const holds = of(
    judged(rooftop, "line voltage dropped from 468 to 441 V at start").findings,
    "supply",
  );
  expect(holds.map((one) => one.level)).toEqual(["good"]);
});

test("three even figures far under the plate beside the line's volts are no supply", () => {
  const { findings, diagnosis } = judged(
    { ...rooftop, rla_A: 66 },
    "472 469 471 volts between phases",
    "61.2 60.8 61.5 on compressor 1",
  );
  expect(of(findings, "supply").some((one) => one.level === "bad")).toBe(false);
  expect(diagnosis[0]?.fault).toBe("no_fault");
});

test("a cold room's coil that is iced over asks for the defrost first, one iced at its inlet does not", () => {
  const cooler: EquipmentFacts = { kind: "walk-in cooler", refrigerant: "R-448A", drive: "line" };
  const whole = judged(cooler, "evaporator coil is iced solid, box 46 F");
  expect(whole.next[0]?.why.toLowerCase()).toContain("defrost");
  expect(whole.diagnosis[0]?.probability).toBeLessThan(0.6);
  const inlet = judged(cooler, "coil iced on the first two rows, rest is bare, box 46 F");
  expect(inlet.next[0]?.why.toLowerCase()).not.toContain("defrost");
  const office = judged(split, "indoor coil is iced up");
  expect(office.next[0]?.check).toBe("airflow");
});

test("a machine that runs and shows nothing amiss is not asked for its control voltage", () => {
  const { next } = judged(rooftop, "yearly service: 478 479 478 V, runs 17.1 17.0 17.2 A");
  expect(next.at(-1)?.check).toBe("commissioning");
  expect(next.map((one) => one.check)).not.toContain("control_voltage");
  // the same figures with a complaint leave the question open
  const called = judged(
    rooftop,
    "unit was dead this morning. 478 479 478 V, runs 17.1 17.0 17.2 A",
  );
  expect(called.next.map((one) => one.check)).not.toContain("commissioning");
});

test("locked-rotor current in two legs with none in the third proves no seized rotor", () => {
  const { findings, diagnosis } = judged(
    rooftop,
    "hums, 110 A on two legs and nothing on the third until it trips",
    "comp 0.5 0.5 0.5 ohm between the leads",
  );
  expect(diagnosis[0]?.fault).not.toBe("compressor_rotor_locked");
  expect(of(findings, "start_current")[0]?.says).toContain("the third none");
});

test("a row of volts across a contactor that feeds a running motor is the line's, not an open pole", () => {
  const one: EquipmentFacts = { drive: "line", phases: 1, supply_V: 208, lra_A: 92, rla_A: 17 };
  const { findings } = judged(one, "204 V across the contactor, 15.2 A running");
  expect(of(findings, "contactor")).toEqual([]);
  const idle = judged(one, "204 V across the contactor");
  expect(of(idle.findings, "contactor").map((each) => each.level)).toEqual(["watch"]);
});

test("a drive's plug with a pin pushed out is a connection before it is a board", () => {
  const inverter: EquipmentFacts = { drive: "inverter", phases: 3, supply_V: 460 };
  const { diagnosis } = judged(
    inverter,
    "24 V out of the main board, 0 V at the inverter control plug, found the harness pin pushed out",
  );
  expect(diagnosis[0]?.fault).toBe("connection_loose");
});

test("a rail against a leg in a diode test is a drop, never what the bus holds", () => {
  const inverter: EquipmentFacts = { drive: "inverter", phases: 3, supply_V: 460 };
  const { findings, diagnosis } = judged(
    inverter,
    "diode check: DC+ to U 0.01 both ways, V and W 0.42",
    "comp pairs 0.48 0.48 0.48, 900 meg",
  );
  expect(of(findings, "dc_bus")).toEqual([]);
  expect(of(findings, "bridge").some((one) => one.level === "bad")).toBe(true);
  expect(diagnosis[0]?.fault).toBe("drive_output_failed");
});

test("one diode OL with the probes turned over too is open, a leg OL once is odd", () => {
  const inverter: EquipmentFacts = { drive: "inverter", phases: 3, supply_V: 460 };
  const both = judged(inverter, "diode mode, red on L1 0.44, L2 0.44, L3 OL, OL swapped round");
  expect(both.diagnosis[0]?.fault).toBe("drive_rectifier_failed");
  expect(of(both.findings, "bridge").map((one) => one.level)).toContain("bad");
  const once = judged(inverter, "diode mode, red on L1 0.44, L2 0.44, L3 OL");
  expect(of(once.findings, "bridge").map((one) => one.level)).not.toContain("bad");
});

test("the plate's volts said behind the amps are no running current", () => {
  const machine = { ...rooftop, supply_V: 575, rla_A: 24, lra_A: 150 };
  const { findings } = judged(machine, "settles 22.8 23.1 22.9, 574 575 578 under load");
  expect(of(findings, "running_current").some((one) => one.level === "bad")).toBe(false);
});

test("a sensor is held against the table that a later message tells", () => {
  const { findings, diagnosis } = judged(
    {},
    "discharge thermistor pulled, reads 5.1k at 76 F",
    "the table in the door says 50k at 77 F",
  );
  expect(of(findings, "sensor").map((one) => one.level)).toEqual(["bad"]);
  expect(diagnosis[0]?.fault).toBe("sensor_failed");
});

test("a coil alike at both ends with its valve told open has no flow, a cold one has", () => {
  const zones: EquipmentFacts = { drive: "inverter", refrigerant: "R-410A", mode: "cooling" };
  const warm = judged(zones, "room 5 is warm, its EEV at 480 steps, pipe in 74 F pipe out 75 F");
  expect(warm.diagnosis[0]?.fault).toBe("expansion_valve_underfeeding");
  const cold = judged(zones, "room 5, its EEV at 480 steps, pipe in 52 F pipe out 54 F");
  expect(of(cold.findings, "valve")).toEqual([]);
});

test("gas is no lower in pressure than the liquid that it becomes", () => {
  const { findings } = judged(split, "suction 107 psig, liquid 330 psig 95 F, discharge 165");
  expect(of(findings, "compression").some((one) => one.level !== "good")).toBe(false);
});

test("boards exchanged between two compressors: the trip that moves goes with the drive", () => {
  const inverter: EquipmentFacts = { drive: "inverter", phases: 3, supply_V: 460 };
  const { diagnosis } = judged(
    inverter,
    "overcurrent trip every start",
    "swapped the inverter boards between comp 1 and comp 2 and the trip moved to comp 2",
  );
  expect(diagnosis[0]?.fault).toBe("drive_output_failed");
});

test("nothing floods at a start that nobody made", () => {
  const machine: EquipmentFacts = { drive: "inverter", phases: 3, supply_V: 460 };
  const cold = "crankcase heater breaker was off since autumn";
  const untried = judged(machine, `${cold}, nothing has been started yet`);
  const share = (one: typeof untried) =>
    one.diagnosis.find(({ fault }) => fault === "flooded_start")?.probability ?? 0;
  expect(share(untried)).toBeLessThan(share(judged(machine, `${cold}, comp started and tripped`)));
  expect(share(untried)).toBeLessThan(0.3);
});

test("the line told in one breath with the bus is no second bus, nor is a ramp behind it", () => {
  const inverter: EquipmentFacts = { drive: "inverter", phases: 3, supply_V: 460, rla_A: 30 };
  const { findings } = judged(
    inverter,
    "dc bus reads 646 V, 468 in on all three",
    "ramps up to 22.5",
  );
  expect(of(findings, "dc_bus").map((one) => one.level)).toEqual(["good"]);
  // a bus that is told low stays low
  const low = judged(inverter, "dc bus reads 470 V, line 468 470 469");
  expect(of(low.findings, "dc_bus").map((one) => one.level)).toContain("bad");
});

test("volts lost over a contactor are volts, whatever it pulls", () => {
  const { findings } = judged(rooftop, "contactor pulls in clean, 0.1 V drop across the contacts");
  expect(of(findings, "running_current")).toEqual([]);
  expect(of(findings, "contactor").map((one) => one.level)).toEqual(["good"]);
});
