import { describe, expect, it } from "vitest";
import { judge } from "../src/judge/judge.ts";
import type { CaseNote, EquipmentFacts, Finding, Level, PastCase } from "../src/model.ts";
import { amps, caseOf, did, megs, note, pairs, r, seen, volts } from "./case-builder.ts";

/** Every electrical check: one good, one bad and one unknown example at least, the source beside. */

const line3: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };
const line1: EquipmentFacts = { drive: "line", phases: 1, supply_V: 230, rla_A: 16, lra_A: 92 };
const inverter: EquipmentFacts = {
  drive: "inverter",
  phases: 3,
  supply_V: 460,
  rla_A: 20,
  moc_A: 24,
};

interface Wanted {
  readonly title: string;
  readonly facts?: EquipmentFacts;
  readonly notes: readonly CaseNote[];
  readonly check: string;
  readonly level: Level;
  readonly values?: Readonly<Record<string, readonly [number, number]>>;
  readonly says?: RegExp;
  readonly history?: readonly PastCase[];
}

function found(wanted: Wanted): readonly Finding[] {
  const whole = caseOf(wanted.facts ?? line3, wanted.notes, wanted.history ?? []);
  return judge(whole).findings.filter((one) => one.check === wanted.check);
}

const rank = { unknown: 0, good: 1, watch: 2, bad: 3 } as const;

function check(wanted: Wanted): void {
  const findings = found(wanted);
  const gravest = [...findings].sort((a, b) => rank[b.level] - rank[a.level])[0];
  expect(gravest?.level, JSON.stringify(findings)).toBe(wanted.level);
  for (const [name, [from, to]] of Object.entries(wanted.values ?? {})) {
    const value = findings.flatMap((one) => one.values[name] ?? [])[0];
    expect(value, name).toBeGreaterThanOrEqual(from);
    expect(value, name).toBeLessThanOrEqual(to);
  }
  if (wanted.says !== undefined)
    expect(findings.map((one) => one.says).join(" ")).toMatch(wanted.says);
  if (wanted.level === "unknown") expect(gravest?.missing).toBeTruthy();
}

const past = (...parts: Parameters<typeof note>[1][]): PastCase => ({
  notes: [note("", ...parts)],
});

/** A peak of 118 A at start, and what was read behind it. */
const afterStart = (text: string, after: readonly number[]): CaseNote =>
  note(
    text,
    r("current", 118, { state: "start", stat: "peak", said: "start peak 118" }),
    ...after.map((value) => r("current", value, { said: String(value) })),
  );

const cases: readonly Wanted[] = [
  // insulation: IEEE 43-2013 12.3 and 6.3; tiers and trend: common practice, no source
  {
    title: "0.3 megohm is a ground fault on every floor",
    notes: [note("", megs([3e5, 3e5, 3.1e5]))],
    check: "insulation",
    level: "bad",
    says: /every published floor/,
  },
  {
    title: "1 megohm is below most floors",
    notes: [note("", megs([1e6, 1e6, 1e6]))],
    check: "insulation",
    level: "bad",
    says: /most published floors/,
  },
  {
    title: "2.2 megohm at 70 C is above the floor by both rules",
    notes: [note("", megs([2.2e6, 2.2e6, 2.2e6], { temperature: 70 }))],
    check: "insulation",
    level: "watch",
    values: { at_40C_Ohm: [17.5e6, 17.7e6], at_40C_thermosetting_Ohm: [7.13e6, 7.21e6] },
  },
  {
    title: "9 megohm at 15 C flips between the rules and is watched",
    notes: [note("", megs([9e6, 9e6, 9e6], { temperature: 15 }))],
    check: "insulation",
    level: "watch",
    says: /depending on the correction rule/,
  },
  {
    title: "88 megohm hot is several hundred at 40 C",
    notes: [note("", megs([88e6, 88e6, 89e6], { temperature: 76 }))],
    check: "insulation",
    level: "good",
  },
  {
    title: "a temperature outside 10 to 85 C gives no thermosetting figure",
    notes: [note("", megs([5e7, 5e7, 5e7], { temperature: 95 }))],
    check: "insulation",
    level: "good",
    says: /outside the correction range/,
  },
  {
    title: "60 megohm speaks for moisture",
    notes: [note("", megs([6e7, 6.1e7, 6e7]))],
    check: "insulation",
    level: "watch",
    says: /moisture/,
  },
  {
    title: "100 megohm is where no floor and no tier objects",
    notes: [note("", megs([1e8, 1e8, 1e8]))],
    check: "insulation",
    level: "good",
  },
  {
    title: "leads that differ doubt the measurement first",
    notes: [note("", megs([1.42e8 / 10, 1.9e9, 2.1e9]))],
    check: "insulation",
    level: "watch",
    says: /doubt the measurement first/,
  },
  {
    title: "an over-range reading is a bound and sound",
    notes: [note("", megs(["OL", "OL", "OL"]))],
    check: "insulation",
    level: "good",
    says: /over range/,
  },
  {
    title: "a drop to a fourteenth of its own history is watched",
    notes: [
      note("", megs([1.42e8, 1.47e8, 1.44e8]), r("insulation_resistance", 2e9, { earlier: true })),
    ],
    check: "insulation",
    level: "watch",
    says: /factor of 14/,
  },
  {
    title: "an over-range history gives at least the factor",
    notes: [
      note(
        "",
        megs([4.1e8, 4.1e8, 4.1e8]),
        r("insulation_resistance", 2.2e9, { earlier: true, relation: ">" }),
      ),
    ],
    check: "insulation",
    level: "watch",
    says: /at least a factor of 5/,
  },
  {
    title: "history from before the compressor was replaced is another motor's",
    notes: [note("", megs([3.9e8, 3.9e8, 3.9e8]))],
    history: [past(megs([9e9, 9e9, 9e9]), did("replaced", "compressor 1"))],
    check: "insulation",
    level: "good",
  },
  {
    title: "history of an earlier job counts",
    notes: [note("", megs([1.2e8, 1.2e8, 1.2e8]))],
    history: [past(megs([2e9, 2e9, 2e9]))],
    check: "insulation",
    level: "watch",
  },
  {
    title: "a wrong test voltage is said once",
    notes: [note("", megs([5e8, 5e8, 5e8], { test_voltage: 1000 }))],
    check: "insulation",
    level: "good",
    says: /tested at 1000 V where 500 V/,
  },
  {
    title: "one low lead with the wiring landed is watched, not condemned",
    notes: [note("0.1 meg, leads still landed", megs([1e5]))],
    check: "insulation",
    level: "watch",
    says: /lift the leads/,
  },
  {
    title: "a climb after the heater clears the winding",
    notes: [
      note("", megs([1.1e7, 1.1e7, 1.15e7])),
      note("heater on six hours", megs([2.4e8, 2.38e8, 2.41e8])),
    ],
    check: "insulation",
    level: "good",
  },
  {
    title: "a second grounded compressor asks for the cause",
    notes: [note("", megs([4e5, 4e5, 4e5]))],
    history: [past(megs([1e5, 1e5, 1e5]), did("replaced", "compressor 2"))],
    check: "history",
    level: "watch",
    says: /never recorded/,
  },
  // polarization: IEEE 43-2013 5.4, 12.2
  {
    title: "an index above 5 gigohm is not judged",
    notes: [note("", megs([6.2e9], { after_s: 60 }), megs([7.44e9], { after_s: 600 }))],
    check: "polarization",
    level: "unknown",
    values: { polarization_index: [1.19, 1.21] },
  },
  {
    title: "an index of 1.2 fails no hermetic motor",
    notes: [note("", megs([9e8], { after_s: 60 }), megs([1.08e9], { after_s: 600 }))],
    check: "polarization",
    level: "unknown",
    values: { polarization_index: [1.19, 1.21] },
  },
  {
    title: "an absorption ratio of 1.578 is good by the table",
    notes: [note("", megs([9e7], { after_s: 30 }), megs([1.42e8], { after_s: 60 }))],
    check: "polarization",
    level: "good",
    values: { absorption_ratio: [1.573, 1.583] },
  },
  {
    title: "a ratio that falls with time is watched",
    notes: [note("", megs([4e7], { after_s: 30 }), megs([3.7e7], { after_s: 60 }))],
    check: "polarization",
    level: "watch",
    values: { absorption_ratio: [0.92, 0.93] },
  },
  // winding: maintenance literature, 2 and 5 percent
  {
    title: "1.92 percent is even",
    notes: [note("", pairs([0.52, 0.53, 0.51]))],
    check: "winding",
    level: "good",
    values: { winding_unbalance_percent: [1.9, 1.94] },
  },
  {
    title: "7.41 percent is to be looked into",
    notes: [note("", pairs([0.52, 0.58, 0.52]))],
    check: "winding",
    level: "watch",
    values: { winding_unbalance_percent: [7.39, 7.43] },
  },
  {
    title: "one pair a third low is bad",
    notes: [note("", pairs([0.42, 0.28, 0.43]))],
    check: "winding",
    level: "bad",
    values: { winding_unbalance_percent: [25.1, 26.2] },
  },
  {
    title: "a tenth of an ohm decides nothing at half an ohm",
    notes: [note("", pairs([0.5, 0.6, 0.5]))],
    check: "winding",
    level: "good",
  },
  {
    title: "two open pairs name their lead",
    notes: [note("", pairs(["OL", "OL", 0.8]))],
    check: "winding",
    level: "bad",
    says: /lead T2/,
  },
  {
    title: "all pairs open on a cold shell doubt the reading",
    notes: [note("", pairs(["OL", "OL", "OL"]), seen("shell_cold"))],
    check: "winding",
    level: "watch",
    says: /measure again/i,
  },
  {
    title: "all pairs open on a hot shell are the overload",
    notes: [note("", pairs(["OL", "OL", "OL"]), seen("shell_hot"))],
    check: "winding",
    level: "watch",
    says: /overload/,
  },
  {
    title: "one pair alone is not judged",
    notes: [note("", pairs([0.6]))],
    check: "winding",
    level: "unknown",
  },
  {
    title: "run to start equals the sum",
    facts: line1,
    notes: [note("", cs(0.6, 2.1, 2.7))],
    check: "winding",
    level: "good",
  },
  {
    title: "an open start winding is told from an open overload",
    facts: line1,
    notes: [note("", cs(1.1, "OL", "OL"))],
    check: "winding",
    level: "bad",
    says: /start winding/,
  },
  {
    title: "both commons open, run to start whole: the overload",
    facts: line1,
    notes: [note("", cs("OL", "OL", 3.1), seen("shell_hot"))],
    check: "winding",
    level: "watch",
    says: /overload/,
  },
  // start: NEMA MG 1 12.35; durations common practice, no source
  {
    title: "118 A for 0.3 s is an ordinary line start",
    notes: [note("", amps([118], { state: "start", for_s: 0.3 }))],
    check: "start_current",
    level: "good",
  },
  {
    title: "122 A for 4 s is a rotor that does not turn",
    notes: [note("", amps([122], { state: "start", for_s: 4 }))],
    check: "start_current",
    level: "bad",
  },
  {
    title: "locked-rotor current goes with the voltage",
    notes: [note("", amps([110], { state: "start", for_s: 3 }), volts([414, 414, 414]))],
    check: "start_current",
    level: "bad",
    values: { expected_locked_rotor_A: [116.5, 117.5] },
  },
  {
    title: "for how long is asked where it decides",
    notes: [note("", amps([122], { state: "start" }))],
    check: "start_current",
    level: "unknown",
  },
  {
    title: "1.7 times RLA is too low for a line start",
    facts: { drive: "line", phases: 3, supply_V: 460, rla_A: 18.6 },
    notes: [note("", amps([32], { state: "start" }))],
    check: "start_current",
    level: "unknown",
    says: /slow meter/,
  },
  {
    title: "an inverter's ramp below its maximum is good",
    facts: inverter,
    notes: [note("", r("current", 17, { series: [3, 9, 17] }))],
    check: "start_current",
    level: "good",
  },
  {
    title: "1.33 times the maximum is high for a ramp",
    facts: inverter,
    notes: [note("", amps([32], { state: "start" }))],
    check: "start_current",
    level: "watch",
  },
  {
    title: "three times the maximum is no ramp",
    facts: inverter,
    notes: [note("", amps([72], { state: "start" }))],
    check: "start_current",
    level: "bad",
  },
  // running: plate; NEMA MG 1 14.36
  {
    title: "amps within the plate are good",
    notes: [note("", amps([15.7, 15.9, 16], { state: "running" }))],
    check: "running_current",
    level: "good",
  },
  {
    title: "a dead line is single-phasing, not unbalance",
    notes: [note("", amps([0.2, 33, 34], { state: "running" }))],
    check: "running_current",
    level: "bad",
    says: /carries nothing/,
  },
  {
    title: "8 percent current on 0.4 percent voltage stays below the limit",
    notes: [note("", amps([18.2, 17.1, 19.9], { state: "running" }))],
    check: "running_current",
    level: "good",
  },
  {
    title: "15 percent on 3.6 percent voltage is the supply's",
    notes: [note("", amps([17, 19.5, 22], { state: "running" })), note("", volts([472, 458, 440]))],
    check: "running_current",
    level: "watch",
    says: /explained/,
  },
  {
    title: "an inverter's uneven input is no fault",
    facts: inverter,
    notes: [note("", amps([12, 16, 20], { state: "running" }))],
    check: "running_current",
    level: "good",
    says: /rectifier/,
  },
  {
    title: "what a current fell through after the start is no load",
    notes: [afterStart("start peak 118, then 40, then 14.1", [40, 14.1])],
    check: "running_current",
    level: "good",
    says: /^14\.1 A, RLA 20: within its plate$/,
  },
  {
    title: "nor is it where it was read as running",
    notes: [
      note(
        "start peak 118 A, then 40 A, then 14.1 A",
        r("current", 118, { state: "start", stat: "peak", said: "start peak 118 A" }),
        r("current", 40, { state: "running", said: "40 A" }),
        r("current", 14.1, { said: "14.1 A" }),
      ),
    ],
    check: "running_current",
    level: "good",
  },
  {
    title: "where it stays after the start is the load",
    notes: [afterStart("start peak 118, then 60, then 40", [60, 40])],
    check: "running_current",
    level: "bad",
    says: /^40 A, RLA 20: overloaded$/,
  },
  {
    title: "legs in a row after the start are all loads",
    notes: [afterStart("start peak 118, then 40, 14.1", [40, 14.1])],
    check: "running_current",
    level: "bad",
    says: /^40 and 14\.1 A/,
  },
  {
    title: "no rating, no verdict",
    facts: { drive: "line" },
    notes: [note("", amps([12, 12, 12], { state: "running" }))],
    check: "running_current",
    level: "unknown",
  },
  // supply: NEMA MG 1 14.36, 12.44
  {
    title: "1.45 percent unbalance is below the usual limit",
    facts: { ...line3, supply_V: 230 },
    notes: [note("", volts([230, 226, 232]))],
    check: "supply",
    level: "good",
    values: { unbalance_percent: [1.43, 1.47], derating_factor: [0.957, 0.997] },
  },
  {
    title: "4.44 percent is watched and derates",
    notes: [note("", volts([460, 460, 430]))],
    check: "supply",
    level: "watch",
    values: { unbalance_percent: [4.42, 4.46], derating_factor: [0.769, 0.809] },
  },
  {
    title: "above 5 percent a motor does not run",
    notes: [note("", volts([480, 478, 430]))],
    check: "supply",
    level: "bad",
    says: /do not run/,
  },
  {
    title: "409 V is under a 460 V plate",
    notes: [note("", volts([409, 412, 411]))],
    check: "supply",
    level: "bad",
  },
  {
    title: "414 V is the plate's lower end",
    notes: [note("", volts([414, 415, 414]))],
    check: "supply",
    level: "good",
  },
  {
    title: "523 V is over a 460 V plate",
    notes: [note("", volts([523, 521, 520]))],
    check: "supply",
    level: "bad",
  },
  {
    title: "two halves and a whole are a lost phase",
    notes: [note("", volts([464, 228, 233]))],
    check: "supply",
    level: "bad",
    says: /phase is lost/,
  },
  {
    title: "two phases at one potential are a lost phase",
    facts: { ...line3, supply_V: 208 },
    notes: [note("", volts([11, 207, 207]))],
    check: "supply",
    level: "bad",
    says: /phase is lost/,
  },
  {
    title: "a phase dead to ground is lost",
    notes: [note("", ground([277, 276, 0]))],
    check: "supply",
    level: "bad",
  },
  {
    title: "a high leg is no fault",
    facts: { ...line3, supply_V: 230 },
    notes: [note("", ground([120, 208, 121]))],
    check: "supply",
    level: "good",
    says: /high leg/,
  },
  {
    title: "a sag at start with volts held upstream is a joint",
    facts: line1,
    notes: [
      note(
        "237 sitting, falls to 169 when it tries, 235 still on the line lugs",
        r("voltage", 237, { said: "237" }),
        r("voltage", 169, { said: "169", state: "start" }),
        r("voltage", 235, { said: "235" }),
      ),
    ],
    check: "supply",
    level: "bad",
    says: /connection/,
  },
  {
    title: "no plate, no range",
    facts: {},
    notes: [note("", volts([460, 461, 459]))],
    check: "supply",
    level: "good",
  },
  // bus: rectifier theory; bands common practice, no source
  {
    title: "668 V on 476 V idle is as the line gives it",
    facts: inverter,
    notes: [note("", volts([476, 476, 476]), bus(668))],
    check: "dc_bus",
    level: "good",
    values: { expected_dc_bus_V: [672, 674] },
  },
  {
    title: "246 V on 206 V running is low",
    facts: { ...inverter, supply_V: 208 },
    notes: [note("running", volts([206, 206, 206]), bus(246, "running"))],
    check: "dc_bus",
    level: "bad",
    values: { expected_dc_bus_V: [277, 279] },
  },
  {
    title: "50 V with the power off is over the touch limit",
    facts: inverter,
    notes: [note("power off 5 min, bus 50 V", bus(50))],
    check: "dc_bus",
    level: "bad",
  },
  {
    title: "49 V with the power off is under it",
    facts: inverter,
    notes: [note("power off 5 min, bus 49 V", bus(49))],
    check: "dc_bus",
    level: "good",
  },
  {
    title: "no line voltage, no verdict on the bus",
    facts: { drive: "inverter" },
    notes: [note("", bus(640))],
    check: "dc_bus",
    level: "unknown",
  },
  // bridge: service literature; spread common practice, no source
  {
    title: "0.41 and 0.42 V agree",
    facts: inverter,
    notes: [note("", drops([0.41, 0.42, 0.41]))],
    check: "bridge",
    level: "good",
  },
  {
    title: "0.02 V is shorted",
    facts: inverter,
    notes: [note("", drops([0.41, 0.02, 0.41]))],
    check: "bridge",
    level: "bad",
    says: /shorted/,
  },
  {
    title: "one leg 0.14 V off is odd",
    facts: inverter,
    notes: [note("", drops([0.41, 0.42, 0.55]))],
    check: "bridge",
    level: "watch",
  },
  {
    title: "uneven output with the motor off is bad",
    facts: inverter,
    notes: [note("", output([204, 87, 88]))],
    check: "bridge",
    level: "bad",
  },
  {
    title: "even output is good",
    facts: inverter,
    notes: [note("", output([93, 92, 93]))],
    check: "bridge",
    level: "good",
  },
  // capacitor: label; C = I/(2 pi f V)
  {
    title: "30.1 microfarad under load on a 35 is bad",
    facts: line1,
    notes: [
      note(
        "cap under load 4.2 A 370 V",
        amps([4.2], { said: "4.2" }),
        r("voltage", 370, { said: "370" }),
        r("capacitance", 35e-6, { rating: "nominal" }),
      ),
    ],
    check: "capacitor",
    level: "bad",
    values: { capacitance_F: [29.9e-6, 30.3e-6], capacitance_error_percent: [-14.6, -13.4] },
  },
  {
    title: "7.0 on a 7.5 is below 6 percent",
    facts: line1,
    notes: [note("", r("capacitance", 7e-6), r("capacitance", 7.5e-6, { rating: "nominal" }))],
    check: "capacitor",
    level: "bad",
  },
  {
    title: "40.25 on a 40 is within",
    facts: line1,
    notes: [note("", r("capacitance", 40.25e-6), r("capacitance", 40e-6, { rating: "nominal" }))],
    check: "capacitor",
    level: "good",
  },
  {
    title: "a capacitor without a label is not judged",
    facts: line1,
    notes: [note("", r("capacitance", 40e-6))],
    check: "capacitor",
    level: "unknown",
  },
  // control, contactor, fan, sensor, communication: common practice, no source
  {
    title: "24.6 V is there",
    notes: [note("", r("voltage", 24.6, { at: "control" }))],
    check: "control_voltage",
    level: "good",
  },
  {
    title: "0 V from R to C is lost",
    notes: [note("", r("voltage", 0, { points: ["R", "C"] }))],
    check: "control_voltage",
    level: "bad",
  },
  {
    title: "17 V is low",
    notes: [note("", r("voltage", 17, { at: "control" }))],
    check: "control_voltage",
    level: "bad",
  },
  {
    title: "an open coil is bad",
    notes: [note("", r("resistance", "OL", { subject: "contactor coil" }))],
    check: "contactor",
    level: "bad",
  },
  {
    title: "32 V over a closed pole is bad",
    notes: [note("", r("voltage", 32, { points: ["L1", "T1"] }))],
    check: "contactor",
    level: "bad",
  },
  {
    title: "0.2 V over a closed pole is good",
    notes: [note("", r("voltage", 0.2, { points: ["L1", "T1"] }))],
    check: "contactor",
    level: "good",
  },
  {
    title: "a fan that stands with its volts is bad",
    notes: [note("", seen("outdoor_fan_not_turning"), r("voltage", 461, { subject: "fan 2" }))],
    check: "fan",
    level: "bad",
  },
  {
    title: "a fan without a plate is not judged",
    notes: [note("", amps([2.1], { subject: "fan 1" }))],
    check: "fan",
    level: "unknown",
  },
  {
    title: "a fan within its plate is good",
    notes: [
      note(
        "",
        amps([2.1], { subject: "fan 1" }),
        r("current", 2.3, { rating: "FLA", subject: "fan 1" }),
      ),
    ],
    check: "fan",
    level: "good",
  },
  {
    title: "a sensor off the given table is bad",
    notes: [
      note(
        "suction sensor",
        r("resistance", 3200, { subject: "suction sensor" }),
        r("resistance", 1e4, { rating: "expected" }),
      ),
    ],
    check: "sensor",
    level: "bad",
  },
  {
    title: "a sensor without a table is not judged",
    notes: [note("suction sensor", r("resistance", 3200, { subject: "suction sensor" }))],
    check: "sensor",
    level: "unknown",
  },
  {
    title: "0.4 V here and 16.2 there is a dead stretch",
    notes: [note("comm pair", pair(0.4)), note("comm pair at the other box", pair(16.2))],
    check: "communication",
    level: "bad",
  },
  {
    title: "16 V on the pair is alive",
    notes: [note("comm pair", pair(16))],
    check: "communication",
    level: "good",
  },
];

function cs(commonRun: number | "OL", commonStart: number | "OL", runStart: number | "OL") {
  return [
    r("winding_resistance", commonRun, { points: ["C", "R"] }),
    r("winding_resistance", commonStart, { points: ["C", "S"] }),
    r("winding_resistance", runStart, { points: ["R", "S"] }),
  ];
}

function ground(values: readonly number[]) {
  return values.map((one, at) => r("voltage", one, { points: [`L${at + 1}`, "ground"] }));
}

function bus(value: number, state?: "running") {
  return r("voltage", value, { at: "dc_bus", kind: "dc", ...(state ? { state } : {}) });
}

function drops(values: readonly number[]) {
  const legs = ["U", "V", "W"];
  return values.map((one, at) => r("diode_drop", one, { points: [legs[at] ?? "U", "DC-"] }));
}

function output(values: readonly number[]) {
  const legs = [
    ["U", "V"],
    ["V", "W"],
    ["U", "W"],
  ];
  return values.map((one, at) => r("voltage", one, { points: legs[at] ?? [], at: "drive_output" }));
}

function pair(value: number) {
  return r("voltage", value, { kind: "dc" });
}

describe("electrical checks", () => {
  it.each(cases.map((one) => [one.title, one] as const))("%s", (_title, wanted) => check(wanted));

  it("take zero volts after a lockout for no dead supply", () => {
    const locked = note("locked out and tagged", did("locked"), volts([0, 0, 0]));
    expect(judge(caseOf(line3, [locked])).findings).toEqual([]);
  });

  it("say nothing of safe, normal or sure, in letters that can be read aloud", () => {
    for (const wanted of cases)
      for (const finding of judge(caseOf(wanted.facts ?? line3, wanted.notes)).findings) {
        expect(finding.says).not.toMatch(/\b(?:safe|normal|certainly|compliant)\b|[^\x20-\x7e]/i);
        expect(finding.basis.split(/\s+/).length).toBeLessThanOrEqual(4);
        expect((finding.brief ?? "").split(/\s+/).length, finding.brief).toBeLessThanOrEqual(10);
        expect(finding.brief).not.toBe("");
      }
  });
});
