import { describe, expect, test } from "vitest";
import type { EquipmentFacts } from "../src/model.ts";
import { judgedNotes, split } from "./support/judged-notes.ts";

/** What a board shows against a gauge, switches that did what they are for, drops over one joint, and what is left to do at last. */

const outdoor: EquipmentFacts = { kind: "outdoor unit", drive: "inverter", refrigerant: "R-410A" };
const motor: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 40 };
const rooftop: EquipmentFacts = { ...split, kind: "rooftop unit" };
const signsOf = (facts: EquipmentFacts, ...notes: readonly string[]): readonly string[] =>
  judgedNotes(facts, notes).findings.flatMap(({ level, signs = [] }) =>
    signs.map((sign) => `${level} ${sign}`),
  );

describe("a board and a gauge on one port", () => {
  const off = "bad sensor:off";
  test.each([
    // 15 percent of the higher; common practice, no source
    ["board reads 101 psi on the low side, gauges say 118", false],
    ["board reads 99 psi on the low side, gauges say 118", true],
    // 70 kPa are 10.15 psi
    ["board reads 20 psi on the low side, gauges say 30", false],
    ["board reads 19 psi on the low side, gauges say 30", true],
    ["controller shows 610 psi head, manifold has 340", true],
    ["controller shows suction 118, my gauges say 121", false],
    ["display has suction 118, my gauge has 340 head", false],
    ["display has the liquid pipe at 31, my clamp says 92", true],
    ["display says 72 in the room, thermometer says 73", false],
  ])("%s: %s", (text, found) => {
    expect(signsOf(outdoor, text).includes(off)).toBe(found);
  });
  test("no longer once the sensor was changed", () => {
    const first = "board reads 12 psi on the low side, gauges say 118";
    expect(signsOf(outdoor, first, "new transducer in, both say 119")).not.toContain(off);
  });
});

describe("a pressure switch that opened", () => {
  const first = (...notes: readonly string[]) => judgedNotes(rooftop, notes).diagnosis[0]?.fault;
  const named = (...notes: readonly string[]) =>
    judgedNotes(rooftop, notes)
      .diagnosis.filter(({ for: says }) => says.length > 0)
      .map(({ fault }) => fault);
  test("speaks of the circuit, never of the control voltage", () => {
    expect(first("trips on high pressure")).toBe("condenser_airflow_low");
    expect(named("tripped on high pressure", "washed the condenser, head 340 now")).not.toContain(
      "control_voltage_lost",
    );
    expect(named("trips on low pressure")).toContain("refrigerant_undercharge");
  });
  test("and stays a matter of the control circuit where it merely stands open", () => {
    expect(named("stat calls, high pressure switch is open")).toContain("control_voltage_lost");
  });
});

describe("volts lost over a joint", () => {
  const burnt = "bad joint:burnt_connection";
  test.each([
    ["4.1 V across the L3 lug on the load side, 0.1 on the other two", true],
    ["3.2 volts over the B phase terminal, .05 and .06 over the others with 30 amps going", true],
    ["466 467 465 on top, 5.5 V across the L1 lug", true],
    // 2 V, common practice, no source
    ["466 467 465 on top, 2.1 V across the L1 lug", true],
    ["466 467 465 on top, 1.9 V across the L1 lug", false],
    ["0.05 across each lug at 30 amps", false],
  ])("%s", (text, found) => {
    expect(signsOf(motor, text).includes(burnt)).toBe(found);
    expect(signsOf(motor, text)).not.toContain("bad supply:dead");
  });
});

test("two fans changed over: the one that stays dead is the motor", () => {
  const first = (text: string) => judgedNotes(outdoor, ["fan 2 locked code", text]).diagnosis[0];
  expect(
    first("swapped the two fan plugs on the board: motor 2 still dead on output 1")?.fault,
  ).toBe("fan_motor_failed");
  expect(
    first("moved fan 2 to output 1 and it won't turn there, fan 1 runs on either")?.fault,
  ).toBe("fan_motor_failed");
});

test("a drive that faults with nothing plugged into it", () => {
  const signs = signsOf(outdoor, "let it try with nothing plugged in and it trips the same");
  expect(signs).toContain("bad unplugged:drive_faults_without_motor");
  expect(signsOf(motor, "breaker trips with nothing hooked up")).not.toContain(
    "bad unplugged:drive_faults_without_motor",
  );
});

test("a valve that was proven leaves its repair as the next thing", () => {
  const { next } = judgedNotes(
    { kind: "walk-in freezer", refrigerant: "R-404A", metering: "expansion_valve" },
    [
      "box 6, wants -10",
      "suction 5 psi, 6 F leaving the coil",
      "head 220, liquid 85 at the valve, glass full",
      "held the bulb in my hand, nothing changes",
    ],
  );
  expect(next.map(({ check }) => check)).toEqual(["valve"]);
  expect(next[0]?.why).toContain("power head");
});

test("a whole machine as warm as told in the next message is what its pressure at rest is held against", () => {
  const notes = ["shut it down 5 hours ago, both gauges 112", "everything in there is 75 degrees"];
  expect(signsOf({ ...rooftop, refrigerant: "R-134a" }, ...notes)).toContain("bad at_rest:above");
  expect(
    signsOf({ ...rooftop, refrigerant: "R-134a" }, notes[0] ?? "", "shop is at 75 degrees"),
  ).not.toContain("bad at_rest:above");
});

test("amps that settled load the bus", () => {
  const expected = (...notes: readonly string[]) =>
    judgedNotes({ ...outdoor, phases: 3, supply_V: 460 }, notes).findings.flatMap(
      ({ values }) => values.expected_dc_bus_V ?? [],
    )[0] ?? 0;
  const bus = "bus 655 line 484 485 483";
  // 3 sqrt 2 over pi, and sqrt 2; rectifier theory
  expect(expected("settled at 14.2 14.3 14.1 on the output", bus)).toBeCloseTo(653.6, 0);
  expect(expected("no call yet", bus)).toBeCloseTo(684.5, 0);
});

test("a suction valve seated for a test changes nothing, and what is read behind it is a pump-down", () => {
  const { findings } = judgedNotes({ ...rooftop, refrigerant: "R-22" }, [
    "suction 98 head 172, 85 out",
    "front seated the suction, won't go under 40",
  ]);
  const ratio = findings.flatMap(({ values }) => values.compression_ratio ?? [])[0];
  expect(ratio).toBeCloseTo(186.7 / 112.7, 2);
});

describe("volts at the plug of a fan that is driven by dc", () => {
  const fed = "310 vdc on the fan plug big pins and 15 on the control";
  test.each([
    [`${fed}, speed pin 3.2 V. it just twitches`, true],
    // 0.5 V asks for nothing; common practice, no source
    [`${fed}, speed pin 0.4 V. it just twitches`, false],
    [`${fed}, speed pin 3.2 V. it turns`, false],
  ])("%s: %s", (text, found) => {
    const signs = signsOf({ ...outdoor, phases: 3, supply_V: 208 }, text);
    expect(signs.includes("bad fan:stands_with_voltage")).toBe(found);
    expect(signs.some((sign) => /control:(?:low|lost)/.test(sign))).toBe(false);
  });
});

test("one joint hot, one figure for the others", () => {
  const signs = (text: string) => signsOf(motor, text).includes("bad joint:burnt_connection");
  // 15 K are 27 F; ANSI/NETA MTS table 100.18, from memory
  expect(signs("breaker case on the C pole is 133 F with the others 105")).toBe(true);
  expect(signs("breaker case on the C pole is 131 F with the others 105")).toBe(false);
});
